package bandwright.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names on drawn sheets, read by a program that reads print: poppler draws the page, tesseract reads it un-mirrored. */
final class SetNamesTest {
    private static final int DPI = 150;
    private static final double PER_MM = DPI / 25.4;

    @TempDir
    Path folder;

    @Test
    void aReaderFindsEveryNameOnceItIsUnmirrored() throws IOException, InterruptedException {
        assumeTrue(Programs.has("tesseract") && Programs.has("pdftoppm"), "needs tesseract and poppler");
        Path inbox = folder.resolve("inbox");
        Files.createDirectories(inbox.resolve("artwork"));
        picture(inbox.resolve("artwork/plain.png"));
        Path rules = Files.createDirectories(folder.resolve("rules"));
        Files.writeString(rules.resolve("designs.csv"), "design,artwork,fit\nplain,plain.png,cover\n");
        Files.writeString(
                rules.resolve("texts.csv"),
                "design,field,x,y,width,height,max_size,min_size,font,colour\nplain,name,30,30,40,40,90,8,sans,#10214a\n");
        Files.writeString(inbox.resolve("orders.csv"), """
                Order,SKU,Design,Qty,Text: name
                A1,MUG-11-W,plain,1,Morwenna
                A2,MUG-15-W,plain,1,Kestrel
                A3,CONE-12-W,plain,1,Perran
                A4,CAMP-12-E,plain,1,Jonah Fell
                """);
        Path out = folder.resolve("out");
        int code = WholeRun.bandwright(
                List.of(),
                Map.of(),
                "run",
                inbox.toString(),
                "--rules",
                rules.toString(),
                "--out",
                out.toString(),
                "--date",
                "2026-03-02");
        assertThat(code).isZero();

        Map<String, String> names = Map.of("A1", "Morwenna", "A2", "Kestrel", "A3", "Perran", "A4", "Jonah Fell");
        Path run = out.resolve("2026-03-02-1");
        String report = Files.readString(run.resolve("run.json"));
        for (Map.Entry<String, String> order : names.entrySet()) {
            BufferedImage seen = seen(run, report, order.getKey());
            assertThat(read(seen)).contains(order.getValue());
            assertThat(read(flipped(seen))).as("mirrored, as on the paper").doesNotContain(order.getValue());
        }
    }

    /** The picture of an order's only piece as it is seen on the blank, by what the report says of the paper. */
    private BufferedImage seen(Path run, String report, String order) throws IOException, InterruptedException {
        Matcher unit = Pattern.compile(
                        "\"order\" ?: ?\"" + order + "\".*?\"sheet\" ?: ?(\\d+),\\s*\"x_mm\" ?: ?([\\d.]+),"
                                + "\\s*\"y_mm\" ?: ?([\\d.]+),\\s*\"w_mm\" ?: ?([\\d.]+),"
                                + "\\s*\"h_mm\" ?: ?([\\d.]+),\\s*\"rotation\" ?: ?(\\d+)",
                        Pattern.DOTALL)
                .matcher(report.substring(report.indexOf("\"units\"")));
        assertThat(unit.find()).isTrue();
        String page = String.valueOf(Integer.parseInt(unit.group(1)) + 1);
        Path sheet = run.resolve("sheets/letter-01.pdf");
        Programs.run(
                "pdftoppm",
                "-r",
                String.valueOf(DPI),
                "-f",
                page,
                "-l",
                page,
                "-singlefile",
                "-png",
                sheet.toString(),
                folder.resolve("page").toString());
        BufferedImage drawn = ImageIO.read(folder.resolve("page.png").toFile());
        Matcher sector = Pattern.compile("\"sector\" ?: ?\\{(.*?)\\}", Pattern.DOTALL)
                .matcher(report.substring(report.indexOf("\"units\"") + unit.end()));
        if (order.equals("A3")) {
            assertThat(sector.find()).isTrue();
            return unrolled(drawn, sector.group(1));
        }
        int width = (int) (Double.parseDouble(unit.group(4)) * PER_MM);
        int height = (int) (Double.parseDouble(unit.group(5)) * PER_MM);
        int x = (int) (Double.parseDouble(unit.group(2)) * PER_MM);
        int y = (int) (drawn.getHeight() - Double.parseDouble(unit.group(3)) * PER_MM) - height;
        return flipped(turned(drawn.getSubimage(x, y, width, height), Integer.parseInt(unit.group(6)) / 90));
    }

    /** A cone's picture laid straight: from its left end to its right one, from its rim down. */
    private static BufferedImage unrolled(BufferedImage page, String sector) {
        double inner = figure(sector, "inner_radius_mm");
        double outer = figure(sector, "outer_radius_mm");
        double start = Math.toRadians(figure(sector, "start_deg"));
        double sweep = Math.toRadians(figure(sector, "sweep_deg"));
        double apexX = figure(sector, "apex_x_mm");
        double apexY = figure(sector, "apex_y_mm");
        boolean rimIsOuter = sector.contains("\"rim_is_outer\": true") || sector.contains("\"rim_is_outer\" : true");
        int width = (int) (Math.abs(sweep) * (inner + outer) / 2 * PER_MM);
        int height = (int) ((outer - inner) * PER_MM);
        BufferedImage straight = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int j = 0; j < height; j++) {
            double down = (j + 0.5) / PER_MM;
            double radius = rimIsOuter ? outer - down : inner + down;
            for (int i = 0; i < width; i++) {
                double angle = start + sweep * (i + 0.5) / width;
                double x = (apexX + radius * Math.cos(angle)) * PER_MM;
                double y = page.getHeight() - (apexY + radius * Math.sin(angle)) * PER_MM;
                straight.setRGB(i, j, page.getRGB((int) x, (int) y));
            }
        }
        return straight;
    }

    private static double figure(String sector, String key) {
        Matcher figure = Pattern.compile("\"" + key + "\" ?: ?(-?[\\d.]+)").matcher(sector);
        assertThat(figure.find()).as(key).isTrue();
        return Double.parseDouble(figure.group(1));
    }

    private static void picture(Path file) throws IOException {
        BufferedImage image = new BufferedImage(2200, 950, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(new Color(250, 246, 236));
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.dispose();
        ImageIO.write(image, "png", file.toFile());
    }

    /** Turned clockwise by quarters: what a run turned counter-clockwise. */
    private static BufferedImage turned(BufferedImage image, int quarters) {
        boolean isAcross = quarters % 2 == 1;
        int width = isAcross ? image.getHeight() : image.getWidth();
        int height = isAcross ? image.getWidth() : image.getHeight();
        AffineTransform map = AffineTransform.getTranslateInstance(width / 2.0, height / 2.0);
        map.quadrantRotate(quarters);
        map.translate(-image.getWidth() / 2.0, -image.getHeight() / 2.0);
        return drawn(image, map, width, height);
    }

    private static BufferedImage flipped(BufferedImage image) {
        AffineTransform map = new AffineTransform(-1, 0, 0, 1, image.getWidth(), 0);
        return drawn(image, map, image.getWidth(), image.getHeight());
    }

    private static BufferedImage drawn(BufferedImage image, AffineTransform map, int width, int height) {
        BufferedImage drawn = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = drawn.createGraphics();
        g.drawImage(image, map, null);
        g.dispose();
        return drawn;
    }

    private String read(BufferedImage image) throws IOException, InterruptedException {
        Path file = folder.resolve("read.png");
        ImageIO.write(image, "png", file.toFile());
        return Programs.run("tesseract", file.toString(), "-", "--psm", "6");
    }
}
