package bandwright.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets go through a real CUPS into a file: as they are, or, where the queue filters them, at the size they had. */
final class SheetsInTheQueueTest {
    /**
     * What a description of a printer must have for CUPS (PPD 4.3 and the extensions of CUPS): two papers, A4 by itself,
     * margins, and papers of any size.
     */
    private static final String PRINTER = """
            *PPD-Adobe: "4.3"
            *FormatVersion: "4.3"
            *FileVersion: "1.0"
            *LanguageVersion: English
            *LanguageEncoding: ISOLatin1
            *PCFileName: "LIGHT.PPD"
            *Product: "(Lighthouse)"
            *Manufacturer: "Quillmoor"
            *ModelName: "Lighthouse"
            *ShortNickName: "Lighthouse"
            *NickName: "Lighthouse"
            *PSVersion: "(3010.000) 0"
            *LanguageLevel: "3"
            *ColorDevice: True
            *DefaultColorSpace: RGB
            *cupsFilter2: "%s"
            *OpenUI *PageSize/Paper: PickOne
            *OrderDependency: 10 AnySetup *PageSize
            *DefaultPageSize: A4
            *PageSize A4/A4: ""
            *PageSize Legal/Legal: ""
            *CloseUI: *PageSize
            *OpenUI *PageRegion/Paper: PickOne
            *OrderDependency: 10 AnySetup *PageRegion
            *DefaultPageRegion: A4
            *PageRegion A4/A4: ""
            *PageRegion Legal/Legal: ""
            *CloseUI: *PageRegion
            *DefaultImageableArea: A4
            *ImageableArea A4/A4: "17 17 578 825"
            *ImageableArea Legal/Legal: "18 18 594 990"
            *DefaultPaperDimension: A4
            *PaperDimension A4/A4: "595 842"
            *PaperDimension Legal/Legal: "612 1008"
            *HWMargins: 18 18 18 18
            *VariablePaperSize: True
            *MaxMediaWidth: "2000"
            *MaxMediaHeight: "15000"
            *CustomPageSize True: "pop pop pop pop pop"
            *ParamCustomPageSize Width: 1 points 100 2000
            *ParamCustomPageSize Height: 2 points 100 15000
            *ParamCustomPageSize WidthOffset: 3 points 0 0
            *ParamCustomPageSize HeightOffset: 4 points 0 0
            *ParamCustomPageSize Orientation: 5 int 0 3
            *DefaultFont: Courier
            """;

    private static final String AS_IT_IS = "application/pdf application/pdf 0 gziptoany";
    private static final String FILTERED = "application/vnd.cups-pdf application/pdf 0 -";
    private static final Pattern PAGE_SIZE = Pattern.compile("Page size: +([0-9.]+) x ([0-9.]+) pts");

    @TempDir
    private Path folder;

    @TempDir
    private Path system;

    private OwnCups cups;

    @BeforeEach
    void aShopWithTwoPrinters() throws Exception {
        cups = OwnCups.start(system);
        cups.queue("harbour", PRINTER.formatted(AS_IT_IS));
        // Set to everything by itself that spoils a transfer.
        cups.queue(
                "pier",
                PRINTER.formatted(FILTERED),
                "mirror-default=true",
                "number-up-default=2",
                "copies-default=2",
                "print-scaling-default=fit",
                "sides-default=two-sided-long-edge",
                "job-sheets-default=standard,standard");
        Path rules = Files.createDirectory(folder.resolve("rules"));
        Files.writeString(
                rules.resolve("printers.csv"),
                "id,papers,queue,mirror\ndesk,letter,harbour,file\nwide,legal|pad,pier,file\n");
        Files.writeString(rules.resolve("papers.csv"), """
                id,name,width,height,margin_top,margin_right,margin_bottom,margin_left
                letter,Letter,8.5 in,11 in,1/4 in,1/4 in,1/4 in,1/4 in
                legal,Legal,8.5 in,14 in,1/4 in,1/4 in,1/4 in,1/4 in
                pad,Pad,160 mm,300 mm,1/4 in,1/4 in,1/4 in,1/4 in
                """);
        Files.writeString(
                folder.resolve("orders.csv"), "Order,SKU,Design,Qty\nQ1,MUG-11-W,tern,3\nQ2,COAST-S,lamp,2\n");
    }

    @AfterEach
    void closed() {
        if (cups != null) {
            cups.close();
        }
    }

    @Test
    void theBytesThatArriveAreThoseOfTheSheets() throws Exception {
        Path sheets = print("letter");
        assertThat(cups.printed("harbour")).hasSameBinaryContentAs(sheets);
        assertThat(cups.jobs("harbour")).hasSize(1);
    }

    @Test
    void theSameRunAgainSendsNothing() throws Exception {
        print("letter");
        assertThat(bandwright("letter")).isZero();
        assertThat(cups.jobs("harbour")).hasSize(1);
    }

    @Test
    void aQueueThatFiltersNeitherScalesNorTurnsNorFlipsNorRepeats() throws Exception {
        Path sheets = print("legal");
        assertPageSize(cups.printed("pier"), 612, 1008);
        assertSameLook(sheets, cups.printed("pier"));
    }

    /** CUPS cuts a size down to whole points, so what is on the page moves by half a point at most; its scale stays. */
    @Test
    void aPaperThatNoStandardNamesKeepsItsScale() throws Exception {
        Path sheets = print("pad");
        Path printed = cups.printed("pier");
        assertPageSize(printed, 160 * 72 / 25.4, 300 * 72 / 25.4);
        assertThat(pages(printed)).isEqualTo(pages(sheets));
        Rectangle was = inked(look(sheets, 1, 288));
        Rectangle is = inked(look(printed, 1, 288));
        assertThat(was.width).as("enough to tell a scale by").isGreaterThan(1000);
        assertThat(is.width).isCloseTo(was.width, within(1));
        assertThat(is.height).isCloseTo(was.height, within(1));
        assertThat(is.x).isCloseTo(was.x, within(2));
        assertThat(is.y).isCloseTo(was.y, within(2));
    }

    @Test
    void withoutOurOptionsThatQueueSpoilsTheSheets() throws Exception {
        Path sheets = print("legal");
        int pages = pages(sheets);
        cups.run("lp", "-d", "pier", sheets.toString());
        assertThat(size(cups.printed("pier"))).as("so the tests above can fail").isNotEqualTo(size(sheets));
        assertThat(pages(cups.printed("pier"))).isNotEqualTo(pages);
    }

    private Path print(String paper) throws Exception {
        assertThat(bandwright(paper)).isZero();
        return folder.resolve("out box/2026-03-02-1/sheets/" + paper + "-01.pdf");
    }

    private int bandwright(String paper) throws Exception {
        return WholeRun.bandwright(
                List.of("-XX:TieredStopAtLevel=1"),
                cups.environment(),
                "run",
                folder.resolve("orders.csv").toString(),
                "--artwork",
                WholeRun.SAMPLE.resolve("artwork").toString(),
                "--rules",
                folder.resolve("rules").toString(),
                "--out",
                folder.resolve("out box").toString(),
                "--date",
                "2026-03-02",
                "--paper",
                paper,
                "--print");
    }

    private static void assertPageSize(Path pdf, double width, double height) throws Exception {
        Matcher size = PAGE_SIZE.matcher(size(pdf));
        assertThat(size.find()).isTrue();
        assertThat(Double.parseDouble(size.group(1))).isCloseTo(width, within(1.0));
        assertThat(Double.parseDouble(size.group(2))).isCloseTo(height, within(1.0));
    }

    private void assertSameLook(Path sheets, Path printed) throws Exception {
        assertThat(pages(printed)).isEqualTo(pages(sheets));
        for (int page = 1; page <= pages(sheets); page++) {
            BufferedImage was = look(sheets, page, 72);
            BufferedImage is = look(printed, page, 72);
            assertThat(difference(was, is))
                    .as("share of page %d that looks different", page)
                    .isLessThan(0.002);
            assertThat(difference(was, flipped(was)))
                    .as("a picture that shows a flip")
                    .isGreaterThan(0.05);
        }
    }

    private BufferedImage look(Path pdf, int page, int dpi) throws Exception {
        Path picture = folder.resolve("page");
        String number = String.valueOf(page);
        String name = picture.toString();
        Programs.run(
                "pdftoppm",
                "-r",
                String.valueOf(dpi),
                "-f",
                number,
                "-l",
                number,
                "-singlefile",
                "-png",
                pdf.toString(),
                name);
        return ImageIO.read(folder.resolve("page.png").toFile());
    }

    /** The share of pixels that differ by more than a trace. */
    private static double difference(BufferedImage one, BufferedImage other) {
        int width = Math.min(one.getWidth(), other.getWidth());
        int height = Math.min(one.getHeight(), other.getHeight());
        int different = 0;
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int a = one.getRGB(x, y);
                int b = other.getRGB(x, y);
                int green = Math.abs((a >> 8 & 0xFF) - (b >> 8 & 0xFF));
                different += green > 40 ? 1 : 0;
            }
        }
        return (double) different / (width * height);
    }

    /** Where anything stands on the page. */
    private static Rectangle inked(BufferedImage page) {
        Rectangle inked = new Rectangle(-1, -1);
        for (int y = 0; y < page.getHeight(); y++) {
            for (int x = 0; x < page.getWidth(); x++) {
                if ((page.getRGB(x, y) >> 8 & 0xFF) < 128) {
                    inked.add(new Rectangle(x, y, 1, 1));
                }
            }
        }
        return inked;
    }

    private static BufferedImage flipped(BufferedImage picture) {
        BufferedImage flipped = new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                flipped.setRGB(picture.getWidth() - 1 - x, y, picture.getRGB(x, y));
            }
        }
        return flipped;
    }

    private static int pages(Path pdf) throws Exception {
        Matcher pages = Pattern.compile("Pages: +([0-9]+)").matcher(Programs.run("pdfinfo", pdf.toString()));
        assertThat(pages.find()).isTrue();
        return Integer.parseInt(pages.group(1));
    }

    private static String size(Path pdf) throws Exception {
        Matcher size = PAGE_SIZE.matcher(Programs.run("pdfinfo", pdf.toString()));
        assertThat(size.find()).isTrue();
        return size.group();
    }
}
