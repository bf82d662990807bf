package bandwright.pipeline.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bandwright.pipeline.write.sheets.DrawnArtwork;
import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole runs of a shop that has a roll; every run also reads its own files back before it publishes them. */
class RollRunTest {
    private static final String PAPERS =
            "id,width,height,margin_top,margin_right,margin_bottom,margin_left,max_length,cost";
    private static final String PAD = "pad,110 mm,11 in,1/4 in,1/4 in,1/4 in,1/4 in,,0.12";

    @TempDir
    Path folder;

    private final StringWriter printed = new StringWriter();

    @BeforeEach
    void ordersOfTwoBlanks() throws IOException {
        table("inbox/orders.csv", "Order,SKU,Artwork,Qty", "Q1,MUG-11-W,tides.png,14", "Q2,STEIN-22-W,tides.png,2");
        table(
                "rules/printers.csv",
                "id,papers,mirror,scale_x,scale_y",
                "desk,pad,file,,",
                "wide,roll,driver,0.99,0.98");
        roll("", "1.50");
        table("rules/shop.csv", "key,value", "paper,roll");
        Files.createDirectories(folder.resolve("inbox/artwork"));
        ImageIO.write(
                DrawnArtwork.lighthouse(2200, 960, 3),
                "png",
                folder.resolve("inbox/artwork/tides.png").toFile());
    }

    @Test
    void everyPageOfThePdfIsAsLongAsTheRunSays() throws IOException {
        roll("500 mm", "1.50");
        assertThat(run("outbox")).as(printed::toString).isEqualTo(ExitCode.DONE);

        List<PrintedSheet> sheets = sheets();
        assertThat(sheets).hasSizeGreaterThanOrEqualTo(2);
        try (PDDocument document = Loader.loadPDF(file("outbox", "sheets/roll-01.pdf"))) {
            assertThat(document.getNumberOfPages()).isEqualTo(sheets.size());
            for (int i = 0; i < sheets.size(); i++) {
                PDRectangle page = document.getPage(i).getMediaBox();
                assertThat(sheets.get(i).width()).isEqualTo(609.6);
                assertThat(sheets.get(i).height()).isBetween(100.0, 500.0);
                assertThat((double) page.getWidth()).isCloseTo(sheets.get(i).width() * 72 / 25.4, within(0.001));
                assertThat((double) page.getHeight()).isCloseTo(sheets.get(i).height() * 72 / 25.4, within(0.001));
            }
        }
        for (PrintedUnit unit : units()) {
            // Printed at 0.98 the page ends there, and the margin counts from its end.
            double end = 0.98 * sheets.get(unit.sheet()).height();
            assertThat(unit.y() + unit.height()).isLessThanOrEqualTo(end - 6.35 + 0.01);
        }
    }

    @Test
    void theSameOrdersGiveTheSameBytes() throws IOException {
        assertThat(run("one")).isEqualTo(ExitCode.DONE);
        assertThat(run("two")).isEqualTo(ExitCode.DONE);
        try (Stream<Path> files = Files.walk(folder.resolve("one/2026-03-02-1"))) {
            for (Path one : files.filter(Files::isRegularFile).toList()) {
                Path two = folder.resolve("two").resolve(folder.resolve("one").relativize(one));
                assertThat(two).hasSameBinaryContentAs(one);
            }
        }
    }

    @Test
    void whatThePadDoesNotTakeGoesOnTheRollOfAnotherPrinter() throws IOException {
        table("rules/shop.csv", "key,value", "paper,pad|roll");
        roll("", "9.99");
        assertThat(run("outbox")).as(printed::toString).isEqualTo(ExitCode.DONE);

        List<PrintedSheet> sheets = sheets();
        assertThat(units())
                .filteredOn(unit -> unit.blank().equals("STEIN-22-W"))
                .extracting(unit -> sheets.get(unit.sheet()).printer())
                .containsOnly("wide");
        assertThat(sheets).extracting(PrintedSheet::printer).contains("desk", "wide");
    }

    @Test
    void whatNoPageOfTheRollTakesIsHeldWithItsLongestPage() throws IOException {
        roll("100 mm", "1.50");
        assertThat(run("outbox")).as(printed::toString).isEqualTo(ExitCode.NEEDS_A_PERSON);
        assertThat(json()).contains("\"code\": \"too-large-for-paper\"");
    }

    @Test
    void aPageLongerThanAPdfCanBeStopsTheRun() throws IOException {
        roll("6000 mm", "1.50");
        assertThat(run("outbox")).isEqualTo(ExitCode.NOTHING_PUBLISHED);
        assertThat(printed.toString()).contains("papers.csv", "max_length", "5080");
    }

    private void roll(String maxLength, String cost) throws IOException {
        table("rules/papers.csv", PAPERS, PAD, "roll,24 in,,1/4 in,1/4 in,1/4 in,1/4 in," + maxLength + "," + cost);
    }

    private void table(String name, String... lines) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.write(file, List.of(lines));
    }

    private int run(String outbox) {
        PrintWriter out = new PrintWriter(printed);
        String inbox = folder.resolve("inbox").toString();
        String place = folder.resolve(outbox).toString();
        String rules = folder.resolve("rules").toString();
        return Main.run(out, out, false, "run", inbox, "--out", place, "--rules", rules, "--date", "2026-03-02");
    }

    private record PrintedSheet(String printer, double width, double height) {}

    private record PrintedUnit(String blank, int sheet, double y, double height) {}

    private List<PrintedSheet> sheets() throws IOException {
        return found("\"printer\": \"(.*?)\".*?\"width_mm\": ([0-9.]+).*?\"height_mm\": ([0-9.]+)")
                .map(is ->
                        new PrintedSheet(is.group(1), Double.parseDouble(is.group(2)), Double.parseDouble(is.group(3))))
                .toList();
    }

    private List<PrintedUnit> units() throws IOException {
        String numbers = "\"sheet\": ([0-9]+).*?\"y_mm\": ([0-9.]+).*?\"h_mm\": ([0-9.]+)";
        return found("\"blank\": \"(.*?)\".*?" + numbers)
                .map(is -> new PrintedUnit(
                        is.group(1),
                        Integer.parseInt(is.group(2)),
                        Double.parseDouble(is.group(3)),
                        Double.parseDouble(is.group(4))))
                .toList();
    }

    private Stream<MatchResult> found(String pattern) throws IOException {
        return Pattern.compile(pattern, Pattern.DOTALL).matcher(json()).results();
    }

    private String json() throws IOException {
        return Files.readString(file("outbox", "run.json").toPath());
    }

    private File file(String outbox, String name) {
        return folder.resolve(outbox + "/2026-03-02-1/" + name).toFile();
    }
}
