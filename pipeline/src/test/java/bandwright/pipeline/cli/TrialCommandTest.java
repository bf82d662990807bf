package bandwright.pipeline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import bandwright.rules.blanks.Blank;
import bandwright.rules.heat.Caution;
import bandwright.rules.heat.CautionStep;
import bandwright.rules.heat.Cautions;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.heat.PressSetting;
import bandwright.rules.table.Evidence;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Swatches and a table by which a shop finds a press setting, as somebody reads them who has six blanks to spend. */
final class TrialCommandTest {
    private static final Path BUILT_IN = Path.of("..", "rules", "tables", "press-settings.csv");

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int bandwright(String... words) {
        return Main.run(new PrintWriter(out), new PrintWriter(err), false, words);
    }

    private Path trial(String... words) {
        Path file = folder.resolve("trial.pdf");
        List<String> all = new ArrayList<>(List.of("trial"));
        all.addAll(List.of(words));
        all.addAll(List.of("--out", file.toString()));
        assertThat(bandwright(all.toArray(String[]::new))).as(err.toString()).isZero();
        return file;
    }

    /** The built-in settings with one more row. */
    private Path tables(String row) throws IOException {
        Path tables = Files.createDirectories(folder.resolve("tables"));
        Files.writeString(tables.resolve("press-settings.csv"), Files.readString(BUILT_IN) + row + "\n");
        return tables;
    }

    private static String words(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            StringBuilder all = new StringBuilder();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                String upright = text(document, page);
                if (upright.replaceAll("\\s", "").contains("transfers,sheet")) {
                    document.getPage(page - 1).setRotation(90); // words run up the page
                }
                all.append(text(document, page)).append(' ');
            }
            return all.toString().replaceAll("\\s+", " ");
        }
    }

    private static String text(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document);
    }

    @Test
    void sixBlanksAreEnoughAndTheTriesStandInTheOrderOfTheLeastWaiting() throws IOException {
        String text = words(trial("MUG-11-W", "--heat-source", "clamp"));
        assertThat(out.toString()).contains("3 to begin with, 5 at most");
        assertThat(text)
                .contains("NOT CONFIRMED", "3 to begin with, 5 at most, and one more as a spare")
                .containsSubsequence(
                        "Stage 1",
                        "1 356 \u00b0F (180 \u00b0C) 3 min",
                        "2 374 \u00b0F (190 \u00b0C) 3 min",
                        "3 392 \u00b0F (200 \u00b0C) 3 min",
                        "Stage 2",
                        "press only try 4, shorter",
                        "press only try 5, longer",
                        "4 best of stage 1: _________ 2 min 30 s",
                        "5 best of stage 1: _________ 4 min")
                .containsSubsequence("Try 1", "Try 2", "Try 3", "Try 4", "Try 5", "Try S");
    }

    /** 10 min for the 170 degrees from 20 to 190 C: 35 s for ten of them, begun half minutes. */
    @Test
    void theWaitIsAnEstimateFromTheWarmUp() throws IOException {
        assertThat(words(trial("MUG-11-W", "--heat-source", "clamp")))
                .contains("Warming up takes about 10 min", "about 1 min from one try to the next, an estimate");
    }

    @ParameterizedTest
    @CsvSource({
        "MUG-11-W, clamp",
        "MUG-11-CC, oven",
        "STEIN-16-F, oven",
        "TUM-20-W, tumbler",
        "CAMP-12-E, oven",
        "COAST-R, flat",
        "MUG-11-GL, clamp"
    })
    void everyCautionStandsBeforeTheTries(String sku, String source) throws IOException, RulebookFaults {
        Rulebook rules = Rulebook.read(Optional.empty());
        Blank blank = rules.blanks().find(sku).orElseThrow();
        HeatSource heat = rules.heatSources().find(source).orElseThrow();
        String text = words(trial(sku, "--heat-source", source));
        int checked = 0;
        for (Caution caution : rules.cautions().list()) {
            if (caution.step() != CautionStep.PACK && Cautions.applies(caution, blank, heat.kind())) {
                assertThat(text).containsSubsequence(caution.text(), ": the tries");
                checked++;
            }
        }
        assertThat(checked).isGreaterThan(18);
        assertThat(text)
                .contains(
                        "The supplier's listing and the maker's manual win over every figure here.",
                        "ask a licensed electrician",
                        "Heat-proof gloves, from loading until the piece is cold.");
        if (sku.equals("STEIN-16-F")) {
            assertThat(text).containsSubsequence("GLASS: it can crack or shatter.", "No clamp press", ": the tries");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "STEIN-16-F, clamp, says no for STEIN-16-F",
        "MUG-11-F, clamp, says no for MUG-11-F",
        "TUM-20-W, clamp, and no row says that the listing of TUM-20-W allows it",
        "COAST-R, oven, says no for COAST-R",
        "MUG-11-W, flat, round blanks don't go into",
        "MUG-11-W, clmap, Did you mean clamp?",
        "MUG-11-X, clamp, Did you mean MUG-11-"
    })
    void whatIsNotAllowedIsRefusedInOneLine(String sku, String source, String why) {
        Path file = folder.resolve("none.pdf");
        assertThat(bandwright("trial", sku, "--heat-source", source, "--out", file.toString()))
                .isEqualTo(2);
        assertThat(err.toString()).hasLineCount(1).contains(why);
        assertThat(file).doesNotExist();
    }

    @Test
    void aListingWithOneFigureIsConfirmedByOnePiece() throws IOException {
        Path tables = tables(",mug press,MUG-11-W,370 F,200 s,,,,,medium,yes,yes,hot,,,supplier listing,");
        String text = words(trial("MUG-11-W", "--heat-source", "clamp", "--rules", tables.toString()));
        assertThat(out.toString()).contains("1 to begin with, 1 at most");
        assertThat(text)
                .contains("there is nothing to vary", "Blanks: 1.", "no try leaves them", "there is nothing to type in")
                .doesNotContain("NOT CONFIRMED", "Stage", "TEMPERATURE,TIME", "Try S");
        assertThat(heats(text, "F")).isNotEmpty().containsOnly(370);
    }

    @Test
    void aUsualTimeAtTheShortEndLeadsToLongerOnesOneAfterTheOther() throws IOException {
        Path tables = tables(
                ",mug press,MUG-11-W,360 F,200 s,350 F,370 F,200 s,300 s,medium,yes,yes,hot,,,supplier listing,");
        assertThat(words(trial("MUG-11-W", "--heat-source", "clamp", "--rules", tables.toString())))
                .containsSubsequence(
                        "press only try 4, longer",
                        "Still pale after that: try 5",
                        "4 best of stage 1: _________ 4 min 10 s",
                        "5 best of stage 1: _________ 5 min")
                .doesNotContain("shorter");
    }

    @Test
    void noFigureOfAListingsTrialLiesOutsideOfTheListing() throws IOException {
        Path tables =
                tables(",mug press,MUG-11-W,360 F,200 s,350 F,370 F,3 min,,medium,yes,yes,hot,,,supplier listing,");
        String text = words(trial("MUG-11-W", "--heat-source", "clamp", "--rules", tables.toString()));
        // 350 F is 176.67 C, 370 F is 187.78 C. 374 F stands for how a figure is typed.
        assertThat(heats(text.replace("such as 374 F", ""), "F"))
                .hasSizeGreaterThan(6)
                .contains(350, 360, 370)
                .allMatch(degrees -> degrees >= 350 && degrees <= 370);
        assertThat(heats(text, "C")).hasSizeGreaterThan(6).contains(177, 187).allMatch(c -> c >= 177 && c <= 187);
        assertThat(text)
                .contains("3 min 20 s", "4 best of stage 1: _________ 3 min ")
                .doesNotContain("4 min");
    }

    private static List<Integer> heats(String text, String scale) {
        Matcher heat = Pattern.compile("(\\d+) \u00b0" + scale).matcher(text);
        List<Integer> all = new ArrayList<>();
        while (heat.find()) {
            all.add(Integer.valueOf(heat.group(1)));
        }
        return all;
    }

    /** With figures in the two places the printed row is a row that a run obeys. */
    @Test
    void thePrintedRowConfirmsTheBlank() throws IOException, RulebookFaults {
        Path tables = Files.createDirectories(folder.resolve("tables"));
        Path settings = tables.resolve("press-settings.csv");
        Files.writeString(settings, """
                sku,Heat_Kind,evidence,time,temperature,allowed,material,pressure,peel,gloves,rest,cautions
                ,mug press,common practice,3 min,190 C,yes,ceramic,"firm, even","hot, at once",yes,5 min,glass-look|smoke
                """);
        String text = words(trial("MUG-11-W", "--heat-source", "clamp", "--rules", tables.toString()));
        String row = "MUG-11-W,mug press,measured,TIME,TEMPERATURE,yes,,\"firm, even\",\"hot, at once\",yes,5 min,"
                + "glass-look|smoke";
        assertThat(text.replace(" ", "")).contains(row.replace(" ", ""));
        assertThat(text).contains("add this row to " + settings);
        Files.writeString(
                settings,
                row.replace("TIME", "175 s").replace("TEMPERATURE", "385 F"),
                StandardCharsets.UTF_8,
                StandardOpenOption.APPEND);
        Rulebook rules = Rulebook.read(Optional.of(tables));
        PressSetting found = rules.pressSettings()
                .find(
                        rules.blanks().find("MUG-11-W").orElseThrow(),
                        rules.heatSources().find("clamp").orElseThrow().kind())
                .orElseThrow();
        assertThat(found.isConfirmed()).isTrue();
        assertThat(found.evidence()).isEqualTo(Evidence.MEASURED);
        assertThat(found.timeSeconds()).isEqualTo(175);
        assertThat(found.temperature().orElseThrow().wholeFahrenheit()).isEqualTo(385);
        assertThat(found.cautions()).containsExactly("glass-look", "smoke");
        String again = words(trial("MUG-11-W", "--heat-source", "clamp", "--rules", tables.toString()));
        assertThat(again)
                .contains("measured in this shop", "in place of the one of MUG-11-W and mug press")
                .doesNotContain("NOT CONFIRMED");
    }

    @Test
    void everyPaperOfARunSaysThatItWasMeasured() throws IOException {
        Path tables = tables(",mug press,MUG-11-W,385 F,175 s,,,,,firm,yes,yes,hot,,,measured,");
        Path inbox = Files.createDirectories(folder.resolve("inbox"));
        Files.writeString(inbox.resolve("orders.csv"), "Order,SKU,Artwork\nQ1042,MUG-11-W,tern.jpg\n");
        Path artwork = Path.of("..", "inbox-sample", "artwork");
        Path outbox = folder.resolve("outbox");
        int code = bandwright(
                "run",
                inbox.toString(),
                "--rules",
                tables.toString(),
                "--artwork",
                artwork.toString(),
                "--out",
                outbox.toString(),
                "--date",
                "2026-03-02");
        assertThat(code).as(err.toString()).isZero();
        Path run = outbox.resolve("2026-03-02-1");
        assertThat(words(run.resolve("press-checklist.pdf")))
                .containsSubsequence(
                        "385 \u00b0F (196 \u00b0C), 2 min 55 s, pressure: firm", "For MUG-11-W: measured in this shop.")
                .doesNotContain("NOT CONFIRMED");
        assertThat(Files.readString(run.resolve("index.html")))
                .containsSubsequence(
                        "Confirmed press settings",
                        "385 \u00b0F (196 \u00b0C), 2 min 55 s, pressure: firm",
                        "measured in this shop.")
                .doesNotContain("NOT CONFIRMED");
    }

    @Test
    void aFileThatLacksAColumnIsToldWhich() throws IOException {
        Path tables = Files.createDirectories(folder.resolve("tables"));
        Files.writeString(
                tables.resolve("press-settings.csv"),
                "material,heat_kind,temperature,time,allowed,pressure\nceramic,mug press,190 C,3 min,yes,firm\n");
        assertThat(words(trial("MUG-11-W", "--heat-source", "clamp", "--rules", tables.toString())))
                .contains("lacks the column(s) evidence, gloves, sku");
    }

    @Test
    void theSameTrialHasTheSameBytes() throws IOException {
        byte[] first = Files.readAllBytes(trial("CONE-12-W", "--heat-source", "oven"));
        assertThat(Files.readAllBytes(trial("CONE-12-W", "--heat-source", "oven")))
                .isEqualTo(first);
    }

    @Test
    void noOtherFileIsWrittenOver() throws IOException {
        Path mine = Files.writeString(folder.resolve("mine.pdf"), "mine");
        assertThat(bandwright("trial", "MUG-11-W", "--out", mine.toString())).isEqualTo(2);
        assertThat(err.toString()).hasLineCount(1).contains("left alone");
        assertThat(mine).hasContent("mine");
    }
}
