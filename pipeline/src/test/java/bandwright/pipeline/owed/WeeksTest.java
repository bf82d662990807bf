package bandwright.pipeline.owed;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nothing is printed twice, whatever file says it again; what changed after printing is stopped. */
final class WeeksTest {
    private static final String HEAD = "Order,SKU,Design,Qty,Status\n";

    @TempDir
    private Path folder;

    private Weeks weeks = new Weeks(Path.of(""));

    @BeforeEach
    void open() {
        weeks = new Weeks(folder);
    }

    @Test
    void theSameFileAgainMakesNothingAndPublishesNothing() throws Exception {
        String orders = HEAD + "Q1,MUG-11-W,tern,2,\nQ2,MUGG,tern,1,\n";
        assertThat(story(weeks.run("a.csv", orders)))
                .containsExactly("made Q1-1-1", "made Q1-1-2", "held Q2 x1 blank-unknown");

        assertThat(story(weeks.run("a.csv", orders)))
                .containsExactly("held Q2 x1 blank-unknown", "skipped Q1 x2 already-made");
        assertThat(runs()).containsExactly("2026-03-02-1");
    }

    @Test
    void threeAreAskedForAndTwoWereMadeSoOneIsMade() throws Exception {
        weeks.run("a.csv", HEAD + "Q1,MUG-11-W,tern,2,\n");
        assertThat(story(weeks.run("b.csv", HEAD + "Q1,MUG-11-W,tern,3,\n")))
                .containsExactly("made Q1-1-3", "skipped Q1 x2 already-made");
    }

    @Test
    void overlappingExportsCountOnce() throws Exception {
        String friday = HEAD + "Q1,MUG-11-W,tern,2,\n";
        String monday = HEAD + "Q1,MUG-11-W,tern,2,\nQ1,MUG-15-W,tern,1,\n";
        assertThat(story(weeks.run("friday.csv", friday, "monday.csv", monday)))
                .containsExactly("made Q1-1-1", "made Q1-1-2", "made Q1-2-1", "skipped Q1 x2 already-made");
    }

    @Test
    void filesThatContradictEachOtherAreHeldBoth() throws Exception {
        Run run = weeks.run(
                "a.csv", HEAD + "Q1,MUG-11-W,tern,1,\n", "b.csv", HEAD + "Q1,MUG-15-W,tern,1,\nQ2,MUG-11-W,lamp,1,\n");
        assertThat(story(run))
                .containsExactly(
                        "made Q2-1-1", "held Q1 x1 order-stated-differently", "held Q1 x1 order-stated-differently");
        assertThat(run.held().get(0).reason().message()).contains("a.csv", "b.csv");
    }

    @Test
    void oneFileCancelsWhatAnotherAsksFor() throws Exception {
        Run run = weeks.run(
                "a.csv", HEAD + "Q1,MUG-11-W,tern,1,Paid\n", "b.csv", HEAD + "Q1,MUG-11-W,tern,1,Cancelled\n");
        assertThat(story(run)).containsExactly("held Q1 x1 order-stated-differently", "skipped Q1 x1 cancelled");
    }

    @Test
    void aCancellationAfterPrintingIsHeldAndStopped() throws Exception {
        weeks.run("a.csv", HEAD + "Q1,MUG-11-W,tern,2,\nQ1,MUG-11-W,lamp,1,\n");
        Run run = weeks.run("a.csv", HEAD + "Q1,MUG-11-W,tern,2,Cancelled\nQ1,MUG-11-W,lamp,1,\n");
        assertThat(story(run))
                .containsExactly(
                        "held Q1 x2 changed-after-printing",
                        "skipped Q1 x1 already-made",
                        "stop Q1-1-1",
                        "stop Q1-1-2");
        assertThat(run.held().get(0).reason().message()).contains("Q1-1-1 MUG-11-W, tern", "cancelled");
    }

    @Test
    void theStopListHeadsTheChecklistAndThePageOfTheRun() throws Exception {
        weeks.run("a.csv", HEAD + "Q1,MUG-11-W,tern,1,\n");
        weeks.run("a.csv", HEAD + "Q1,MUG-11-W,tern,1,Cancelled\nQ2,MUG-11-W,lamp,1,\n");
        weeks.run("a.csv", HEAD + "Q1,MUG-11-W,tern,1,Cancelled\nQ2,MUG-11-W,lamp,1,Refunded\n");

        assertThat(text("2026-03-09-1", "press-checklist.pdf"))
                .containsSubsequence(
                        "Stop list", "Q1-1-1", "run 2026-03-02-1", "cancelled", "Before you start", "Q2-1-1");
        assertThat(text("2026-03-16-1", "press-checklist.pdf"))
                .as("with nothing to press")
                .containsSubsequence("Stop list", "Q1-1-1", "Q2-1-1")
                .doesNotContain("Before you start");
        assertThat(Files.readString(weeks.outbox().resolve("2026-03-09-1").resolve("index.html")))
                .contains("pieces on the stop list: 1.");
    }

    @Test
    void aCancellationBeforePrintingIsOnlySkipped() throws Exception {
        assertThat(story(weeks.run("a.csv", HEAD + "Q1,MUG-11-W,tern,2,Cancelled\n")))
                .containsExactly("skipped Q1 x2 cancelled");
    }

    @Test
    void anotherDesignAfterPrintingIsHeldAndStopped() throws Exception {
        weeks.run("a.csv", HEAD + "Q1,MUG-11-W,tern,1,\n");
        assertThat(story(weeks.run("a.csv", HEAD + "Q1,MUG-11-W,lamp,1,\n")))
                .containsExactly("held Q1 x1 changed-after-printing", "stop Q1-1-1");
    }

    @Test
    void fewerPiecesAfterPrintingAreHeldAndTheSurplusStopped() throws Exception {
        weeks.run("a.csv", HEAD + "Q1,MUG-11-W,tern,3,\n");
        assertThat(story(weeks.run("a.csv", HEAD + "Q1,MUG-11-W,tern,2,\n")))
                .containsExactly("held Q1 x2 changed-after-printing", "stop Q1-1-3");
    }

    @Test
    void oneMoreThingInAnOrderIsNoChange() throws Exception {
        weeks.run("a.csv", HEAD + "Q1,MUG-11-W,tern,1,\n");
        assertThat(story(weeks.run("a.csv", HEAD + "Q1,MUG-11-W,tern,1,\nQ1,MUG-15-W,tern,1,\n")))
                .containsExactly("made Q1-2-1", "skipped Q1 x1 already-made");
    }

    @Test
    void whatIsSpoiledIsMadeAgainUnderANameOfItsOwn() throws Exception {
        String orders = HEAD + "Q1,MUG-11-W,tern,2,\n";
        weeks.run("a.csv", orders);
        weeks.spoil("Q1-1-2");
        Run remade = weeks.run("a.csv", orders);
        assertThat(story(remade)).containsExactly("made Q1-1-2-r1", "skipped Q1 x1 already-made");
        assertThat(story(weeks.run("a.csv", orders))).containsExactly("skipped Q1 x2 already-made");
        weeks.spoil("Q1-1-2-r1", "Q1-1-1");
        assertThat(story(weeks.run("a.csv", orders))).containsExactly("made Q1-1-1-r1", "made Q1-1-2-r2");
    }

    @Test
    void aMendedRowIsMadeOnceAndHasTheNameThatItWouldHaveHad() throws Exception {
        String orders = HEAD + "Q1,MUG-11-W,tern,1,\nQ1,MUGG-15,tern,2,\nQ2,MUG-11-W,lamp,1,\n";
        Run first = weeks.run("a.csv", orders);
        assertThat(story(weeks.runMended(first, "MUGG-15", "MUG-15-W"))).containsExactly("made Q1-2-1", "made Q1-2-2");
        assertThat(story(weeks.again())).containsExactly("skipped Q1 x2 already-made");
        assertThat(story(weeks.run("a.csv", orders)))
                .containsExactly(
                        "skipped Q1 x1 already-made", "skipped Q1 x2 already-made", "skipped Q2 x1 already-made");
    }

    @Test
    void aRunFolderMayBeDeletedButItsNumberIsNotGivenAgain() throws Exception {
        weeks.run("a.csv", HEAD + "Q1,MUG-11-W,tern,1,\n");
        Path run = weeks.outbox().resolve("2026-03-02-1");
        try (var all = Files.walk(run)) {
            for (Path file : all.sorted((a, b) -> b.compareTo(a)).toList()) {
                Files.delete(file);
            }
        }
        try (var ledger = bandwright.pipeline.ledger.Ledger.open(weeks.outbox())) {
            assertThat(ledger.highestRun(LocalDate.of(2026, 3, 2))).isEqualTo(1);
        }
        assertThat(story(weeks.run("a.csv", HEAD + "Q1,MUG-11-W,tern,1,\n")))
                .containsExactly("skipped Q1 x1 already-made");
    }

    @Test
    void theShelfServesTheMostUrgentAndTheRestIsNoted() throws Exception {
        weeks.table("stock.csv", "sku,counted_on,count\nMUG-11-W,2026-03-02,3\n");
        String head = "Order,SKU,Design,Qty,Ship By\n";
        Run first = weeks.run("a.csv", head + "Q1,MUG-11-W,tern,2,2026-03-09\nQ2,MUG-11-W,tern,2,2026-03-05\n");
        assertThat(story(first)).containsExactly("made Q1-1-1", "made Q1-1-2", "made Q2-1-1", "made Q2-1-2");
        assertThat(first.units())
                .filteredOn(unit ->
                        unit.notes().stream().anyMatch(note -> note.code().equals("stock")))
                .extracting(unit -> unit.id())
                .containsExactly("Q1-1-2");
    }

    @Test
    void whereTheShopSaysSoWhatIsNotThereIsHeldAndMadeWhenItCame() throws Exception {
        weeks.table("shop.csv", "key,value\nstock,hold\n")
                .table("stock.csv", "sku,counted_on,count\nMUG-11-W,2026-03-01,3\n");
        String orders = HEAD + "Q1,MUG-11-W,tern,2,\nQ2,MUG-11-W,tern,2,\n";
        assertThat(story(weeks.run("a.csv", orders)))
                .containsExactly("made Q1-1-1", "made Q1-1-2", "made Q2-1-1", "held Q2 x1 out-of-stock");
        assertThat(story(weeks.run("a.csv", orders)))
                .as("three were counted and three taken since")
                .containsExactly("held Q2 x1 out-of-stock", "skipped Q1 x2 already-made", "skipped Q2 x1 already-made");
        weeks.table("stock.csv", "sku,counted_on,count\nMUG-11-W,2026-03-14,9\n");
        assertThat(story(weeks.run("a.csv", orders))).contains("made Q2-1-2");
    }

    @Test
    void aSlipNamesWhatWasPrintedBeforeForTheSameBox() throws Exception {
        weeks.run("a.csv", HEAD + "Q1,MUG-11-W,tern,2,\n");
        weeks.run("a.csv", HEAD + "Q1,MUG-11-W,tern,2,\nQ1,MUG-15-W,tern,1,\n");
        assertThat(text("2026-03-09-1", "packing-slips.pdf"))
                .containsSubsequence("1 x", "MUG-15-W", "Printed in an earlier run", "2 x MUG-11-W, tern");
    }

    private String text(String run, String paper) throws IOException {
        Path file = weeks.outbox().resolve(run).resolve(paper);
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void aShopWithManyDesignsPublishesItsHeldRowsToo() throws Exception {
        StringBuilder designs = new StringBuilder("design,artwork,placement,fit\n");
        for (int n = 0; n < 60; n++) {
            designs.append("a design of number ").append(n).append(",tern.jpg,all round,cover\n");
        }
        weeks.table("designs.csv", designs.toString());
        assertThat(story(weeks.run("a.csv", HEAD + "Q1,MUGG,a design of number 7,1,\n")))
                .containsExactly("held Q1 x1 blank-unknown");
        assertThat(runs()).containsExactly("2026-03-02-1");
    }

    private static List<String> story(Run run) {
        return Weeks.story(run);
    }

    private List<String> runs() throws Exception {
        try (var all = Files.list(weeks.outbox())) {
            return all.filter(Files::isDirectory)
                    .map(path -> path.getFileName().toString())
                    .sorted()
                    .toList();
        }
    }
}
