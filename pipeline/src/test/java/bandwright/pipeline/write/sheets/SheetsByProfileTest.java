package bandwright.pipeline.write.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bandwright.pipeline.Run;
import bandwright.pipeline.shop.Stall;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets of a printer that converts by profile: here a printer whose inks are linear light, which is easily checked. */
final class SheetsByProfileTest {
    @TempDir
    Path folder;

    private Stall stall;
    private PDDocument sheets;

    @BeforeEach
    void print() throws Exception {
        stall = new Stall(folder)
                .table(
                        "printers.csv",
                        "id,papers,mirror,colour,icc_profile,intent,scale_x,scale_y",
                        "desk,letter,file,profile,light.icc,,1,1",
                        "wide,13x19|tabloid,driver,driver,,,1,1")
                .table(
                        "designs.csv",
                        "design,artwork,placement,fit,background",
                        "lamp,square.png,opposite,contain,#BC8040")
                .table(
                        "texts.csv",
                        "design,field,anchor,x,y,width,height,max_size,colour",
                        "lamp,name,band,10 %,10 %,80 %,30 %,40,#80BC40")
                .table("shop.csv", "key,value", "contrast_hold,1")
                .orders("weekend.csv", "Order,SKU,Design,Personalisation", "Q1,MUG-11-W,lamp,Ada");
        Files.write(
                folder.resolve("tables/light.icc"),
                ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData());
        square(Files.createDirectories(folder.resolve("artwork")).resolve("square.png"));
        sheets = sheets(stall.artwork(folder.resolve("artwork")));
    }

    private static PDDocument sheets(Stall stall) throws Exception {
        Run run = stall.publish();
        assertThat(run.held()).isEmpty();
        return Loader.loadPDF(stall.outbox()
                .resolve(run.id().toString())
                .resolve("sheets/letter-01.pdf")
                .toFile());
    }

    private static void square(Path file) throws IOException {
        BufferedImage image = new BufferedImage(900, 900, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(new Color(0x40BC80));
        graphics.fillRect(0, 0, 900, 900);
        graphics.dispose();
        ImageIO.write(image, "png", file.toFile());
    }

    /** Linear light by IEC 61966-2-1, 5.2, of 255. */
    private static int light(int encoded) {
        double part = encoded / 255.0;
        double linear = part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
        return (int) Math.round(255 * linear);
    }

    @Test
    void aPicturesPixelsAreThePrintersInks() throws IOException {
        List<PDImageXObject> images = images(sheets.getPage(0).getResources());
        assertThat(images).hasSize(1);
        assertThat(images.get(0).getCOSObject().getItem(COSName.COLORSPACE)).isEqualTo(COSName.DEVICERGB);
        int[] pixel = images.get(0).getRawRaster().getPixels(400, 400, 1, 1, (int[]) null);
        assertThat(pixel[0]).isCloseTo(light(0x40), within(1));
        assertThat(pixel[1]).isCloseTo(light(0xBC), within(1));
        assertThat(pixel[2]).isCloseTo(light(0x80), within(1));
    }

    @Test
    void groundAndLettersAreConvertedAlike() throws IOException {
        List<double[]> inks = fills(sheets);
        assertThat(inks).hasSize(2);
        assertInk(inks.get(0), 0xBC8040);
        assertInk(inks.get(1), 0x80BC40);
    }

    /** Flat shapes stay shapes, in the printer's inks. */
    @Test
    void aDrawingsShapesAreConverted() throws Exception {
        try (PDDocument drawn = drawing("<rect width='90' height='90' fill='#40BC80'/>")) {
            assertThat(images(drawn.getPage(0).getResources())).isEmpty();
            assertThat(fills(drawn)).anySatisfy(ink -> assertInk(ink, 0x40BC80));
        }
    }

    /** A gradient has no flat colour: it becomes pixels in the printer's inks. */
    @Test
    void aDrawingsGradientsAreConverted() throws Exception {
        try (PDDocument drawn = drawing(
                "<linearGradient id='g'><stop stop-color='#40BC80'/>"
                        + "<stop offset='1' stop-color='#40BC80'/></linearGradient><rect width='90' height='90' fill='url(#g)'/>")) {
            List<PDImageXObject> images = images(drawn.getPage(0).getResources());
            assertThat(images).hasSize(1);
            int[] pixel = images.get(0).getRawRaster().getPixels(400, 400, 1, 1, (int[]) null);
            assertThat(pixel[1]).isCloseTo(light(0xBC), within(1));
        }
    }

    private PDDocument drawing(String shapes) throws Exception {
        Files.writeString(
                folder.resolve("artwork/square.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='90' height='90'>" + shapes + "</svg>");
        stall.table("designs.csv", "design,artwork,placement,fit", "lamp,square.svg,opposite,contain")
                .table("texts.csv", "design,field")
                .orders("weekend.csv", "Order,SKU,Design", "Q2,MUG-11-W,lamp");
        return sheets(stall);
    }

    @Test
    void theFileSaysWhoseColoursTheyAre() throws IOException {
        byte[] profile = sheets.getDocumentCatalog()
                .getOutputIntents()
                .get(0)
                .getDestOutputIntent()
                .createInputStream()
                .readAllBytes();
        assertThat(profile)
                .isEqualTo(ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData());
    }

    private static void assertInk(double[] ink, int rgb) {
        assertThat(255 * ink[0]).isCloseTo(light(rgb >> 16 & 255), within(1.0));
        assertThat(255 * ink[1]).isCloseTo(light(rgb >> 8 & 255), within(1.0));
        assertThat(255 * ink[2]).isCloseTo(light(rgb & 255), within(1.0));
    }

    private static List<PDImageXObject> images(PDResources resources) throws IOException {
        List<PDImageXObject> images = new ArrayList<>();
        for (COSName name : resources.getXObjectNames()) {
            PDXObject object = resources.getXObject(name);
            if (object instanceof PDImageXObject image) {
                images.add(image);
            } else if (object instanceof PDFormXObject form) {
                images.addAll(images(form.getResources()));
            }
        }
        return images;
    }

    /** The colours that are set in transfers, in the order in which they are set. */
    private static List<double[]> fills(PDDocument document) throws IOException {
        List<double[]> fills = new ArrayList<>();
        PDResources page = document.getPage(0).getResources();
        for (COSName name : page.getXObjectNames()) {
            if (page.getXObject(name) instanceof PDFormXObject form
                    && name.getName().startsWith(Transfers.NAME)) {
                COSName space = (COSName) form.getResources()
                        .getCOSObject()
                        .getCOSDictionary(COSName.COLORSPACE)
                        .getItem(COSName.getPDFName("Ink"));
                assertThat(space).isEqualTo(COSName.DEVICERGB);
                String content = new String(form.getContentStream().toByteArray(), StandardCharsets.US_ASCII);
                for (String line : content.split("\n", -1)) {
                    if (line.endsWith(" sc")) {
                        String[] parts = line.split(" ", -1);
                        fills.add(new double[] {
                            Double.parseDouble(parts[0]), Double.parseDouble(parts[1]), Double.parseDouble(parts[2])
                        });
                    }
                }
            }
        }
        return fills;
    }
}
