package bandwright.pipeline.write.proofs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bandwright.pipeline.Run;
import bandwright.pipeline.shop.Stall;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a buyer sees, read at places whose colours are known: a picture of four colours side by side. */
final class ProofsTest {
    private static final int[] COLOURS = {0xC83232, 0xF0DC00, 0x32A050, 0x2850C8};
    private static final String BLANKS =
            "sku,material,shape,circumference,height,handle_width,base_colour,hot_colour,handle_colour,inside_colour,"
                    + "heat_sources,backing,outline,width,top_margin,bottom_margin,side_margin";

    /** Where the middle of each of the three views stands, and of the first line of views. */
    private static final int[] MIDDLES = {184, 480, 776};

    private static final int LINE = 243;

    @TempDir
    Path folder;

    private Stall stall;

    @BeforeEach
    void open() throws IOException {
        Path artwork = Files.createDirectories(folder.resolve("artwork"));
        BufferedImage image = new BufferedImage(1200, 600, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        for (int i = 0; i < 4; i++) {
            g.setColor(new Color(COLOURS[i]));
            g.fillRect(300 * i, 0, 300, 600);
        }
        g.dispose();
        ImageIO.write(image, "png", artwork.resolve("flags.png").toFile());
        stall = new Stall(folder)
                .artwork(artwork)
                .table(
                        "blanks.csv",
                        BLANKS,
                        "WHITE,ceramic,cylinder,260 mm,100 mm,20 mm,#FFFFFF,,#112233,#445566,clamp,,,,,,",
                        "PINK,ceramic,cylinder,260 mm,100 mm,20 mm,#F5B6C8,,,,clamp,,,,,,",
                        "SLEEVE,ceramic,cylinder,260 mm,100 mm,20 mm,#202024,#F6F5F2,,,clamp,,,,,,",
                        "GLASS,glass,cylinder,260 mm,100 mm,,#EEF1F1,,,,oven,clear,,,,,",
                        "ROUND,wood,flat,,100 mm,,#FFFFFF,,,,flat,,round,100 mm,-2 mm,-2 mm,-2 mm")
                .table("designs.csv", "design,artwork,fit", "flags,flags.png,fill")
                .table("shop.csv", "key,value", "stretch_hold,500 %", "ppi_hold,10")
                .table("texts.csv", "design,field")
                .table("products.csv", "site,product,blank")
                .table("stock.csv", "sku,counted_on,count");
    }

    /** By the formula of IEC 61966-2-1, by hand: F5, B6 and C8 are 0.913, 0.468 and 0.578 of the light; times that of each colour. */
    @Test
    void thePictureIsSeenOnItsBaseFromThreeSides() throws Exception {
        BufferedImage proof = proof("Q1", "PINK");
        int[][] seen = {{0xC0, 0x21, 0x25}, {0xE7, 0x9C, 0x00}, {0x30, 0x71, 0x3D}, {0x26, 0x36, 0x9C}};
        // The band is 260 less the gap; a quarter of the way round left of its middle lies its first colour ...
        assertColour(proof.getRGB(MIDDLES[0], LINE), seen[0]);
        // ... and in front, just left and right of the middle, the second and the third.
        assertColour(proof.getRGB(MIDDLES[1] - 12, LINE), seen[1]);
        assertColour(proof.getRGB(MIDDLES[1] + 12, LINE), seen[2]);
        assertColour(proof.getRGB(MIDDLES[2], LINE), seen[3]);
    }

    @Test
    void onWhiteThePictureHasItsOwnColoursAndTheCupItsOwn() throws Exception {
        stall.table("shop.csv", "key,value", "stretch_hold,500 %", "ppi_hold,10", "proofs,all");
        BufferedImage proof = proof("Q1", "WHITE");
        assertThat(proof.getRGB(MIDDLES[1] - 12, LINE) & 0xFFFFFF).isEqualTo(COLOURS[1]);
        assertThat(count(proof, 0x112233)).as("handles, left and right").isGreaterThan(2_000);
        assertThat(count(proof, 0x445566)).as("inside, three times").isGreaterThan(2_000);
        // The handle stands left in the first view, right in the last, and is not seen in the middle one.
        assertThat(count(proof.getSubimage(36, 84, 60, 300), 0x112233)).isGreaterThan(900);
        assertThat(count(proof.getSubimage(340, 84, 280, 300), 0x112233)).isZero();
        assertThat(count(proof.getSubimage(861, 84, 60, 300), 0x112233)).isGreaterThan(900);
    }

    @Test
    void aColourChangingCupIsShownColdAndHot() throws Exception {
        BufferedImage proof = proof("Q1", "SLEEVE");
        int cold = proof.getRGB(MIDDLES[1] - 12, LINE);
        int hot = proof.getRGB(MIDDLES[1] - 12, LINE + 254);
        assertThat(cold >> 16 & 255).isLessThan(0x24);
        assertThat(hot >> 16 & 255).isCloseTo(0xE8, within(3));
        assertThat(hot >> 8 & 255).isCloseTo(0xD4, within(3));
    }

    @Test
    void aRoundCoasterIsCutAtItsOwnEdge() throws Exception {
        stall.table("shop.csv", "key,value", "stretch_hold,500 %", "ppi_hold,10", "proofs,all");
        BufferedImage proof = proof("Q1", "ROUND");
        assertThat(proof.getRGB(MIDDLES[1] - 12, LINE) & 0xFFFFFF).isEqualTo(COLOURS[1]);
        // Its box's corner is no part of it; the middle of its side is.
        assertThat(proof.getRGB(MIDDLES[1] - 100, 140) & 0xFFFFFF).isEqualTo(0xF1F1EE);
        assertThat(proof.getRGB(MIDDLES[1] - 100, LINE - 3) & 0xFFFFFF).isEqualTo(COLOURS[0]);
    }

    @Test
    void ordersThatAreWhiteGetOneOnlyIfAllDo() throws Exception {
        stall.orders(
                "a.csv", "Order,SKU,Design", "Q1,WHITE,flags", "Q2,PINK,flags", "Q/3,PINK,flags", "STOCK,PINK,flags");
        assertThat(names()).containsExactly("Q2.png", "Q_3.png");
        stall.table("shop.csv", "key,value", "stretch_hold,500 %", "ppi_hold,10", "proofs,none");
        stall.orders("a.csv", "Order,SKU,Design", "Q4,PINK,flags");
        assertThat(names()).isEmpty();
    }

    @Test
    void whatWaitsForItsBuyerIsShownWithItsCode() throws Exception {
        stall.table(
                "sites.csv",
                "site,files,header_row,date_order,decimal,continued,skip_status,text_separator,empty_words,approval",
                ",,,,,,,,,yes");
        stall.orders("a.csv", "Order,SKU,Design", "Q1,WHITE,flags");
        Run run = stall.publish();
        assertThat(run.held()).hasSize(1);
        assertThat(names(run)).containsExactly("Q1.png");
    }

    private BufferedImage proof(String order, String sku) throws Exception {
        stall.orders("a.csv", "Order,SKU,Design", order + "," + sku + ",flags");
        Run run = stall.publish();
        assertThat(Stall.story(run)).allMatch(line -> line.startsWith("made"));
        return ImageIO.read(folder(run).resolve(order + ".png").toFile());
    }

    private List<String> names() throws Exception {
        return names(stall.publish());
    }

    private List<String> names(Run run) throws IOException {
        if (!Files.isDirectory(folder(run))) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder(run))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private Path folder(Run run) {
        return stall.outbox().resolve(run.id().toString()).resolve("proofs");
    }

    private static int count(BufferedImage image, int rgb) {
        int count = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                count += (image.getRGB(x, y) & 0xFFFFFF) == rgb ? 1 : 0;
            }
        }
        return count;
    }

    private static void assertColour(int pixel, int[] expected) {
        assertThat(pixel >> 16 & 255).isCloseTo(expected[0], within(2));
        assertThat(pixel >> 8 & 255).isCloseTo(expected[1], within(2));
        assertThat(pixel & 255).isCloseTo(expected[2], within(2));
    }
}
