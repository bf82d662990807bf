package bandwright.pipeline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person asks and tells the ledger. */
final class LedgerCommandsTest {
    private static final String ARTWORK =
            Path.of("..", "inbox-sample", "artwork").toString();

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void aMondayIsPrinted() throws Exception {
        Files.writeString(folder.resolve("orders.csv"), "Order,SKU,Design,Qty\nQ1,MUG-11-W,tern,2\n");
        assertThat(run("2026-03-02")).isZero();
        out.getBuffer().setLength(0);
    }

    @Test
    void findSaysWhatBecameOfEveryPiece() {
        assertThat(bandwright("find", "Q1")).isZero();
        assertThat(out.toString())
                .contains("Q1-1-1: MUG-11-W, tern; run 2026-03-02-1, letter-01.pdf, page 1, load 1")
                .contains("Q1-1-2: MUG-11-W, tern");
    }

    @Test
    void anOrderThatWasNeverPrintedIsWrongUsage() {
        assertThat(bandwright("find", "Q7")).isEqualTo(2);
        assertThat(err.toString()).contains("no piece of an order Q7");
    }

    @Test
    void aSpoiledPieceIsMadeAgainAndFindSaysSo() {
        assertThat(bandwright("spoiled", "Q1-1-2", "--reason", "ghosted")).isZero();
        assertThat(run("2026-03-03")).isZero();
        out.getBuffer().setLength(0);
        assertThat(bandwright("find", "Q1")).isZero();
        assertThat(out.toString()).contains(": ghosted; made again as Q1-1-2-r1", "Q1-1-2-r1: MUG-11-W, tern");
    }

    @Test
    void severalPiecesMayStandInAFile() throws Exception {
        Path ids = Files.writeString(folder.resolve("ids.txt"), "Q1-1-1\nQ1-1-2\n");
        assertThat(bandwright("spoiled", "@" + ids, "--reason", "dropped")).isZero();
        assertThat(out.toString()).contains("Q1-1-1: spoiled", "Q1-1-2: spoiled");
    }

    @Test
    void anUnknownPieceMarksNone() {
        assertThat(bandwright("spoiled", "Q1-1-1", "Q1-1-9", "--reason", "ghosted"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("Q1-1-9 is no unit that was printed");
        bandwright("find", "Q1");
        assertThat(out.toString()).doesNotContain("spoiled");
    }

    @Test
    void aReasonIsNeeded() {
        assertThat(bandwright("spoiled", "Q1-1-1")).isEqualTo(2);
        assertThat(bandwright("spoiled", "Q1-1-1", "--reason", " ")).isEqualTo(2);
        assertThat(err.toString()).contains("--reason");
    }

    @Test
    void anOutboxWithoutLedgerIsNotMadeByAsking() {
        String other = folder.resolve("elsewhere").toString();
        assertThat(Main.run(writer(out), writer(err), false, "spoiled", "Q1-1-1", "--reason", "x", "--out", other))
                .isEqualTo(2);
        assertThat(Main.run(writer(out), writer(err), false, "find", "Q1", "--out", other))
                .isEqualTo(2);
        assertThat(folder.resolve("elsewhere")).doesNotExist();
    }

    private int run(String date) {
        String orders = folder.resolve("orders.csv").toString();
        return bandwright("run", orders, "--artwork", ARTWORK, "--date", date);
    }

    private int bandwright(String... words) {
        String[] all = new String[words.length + 2];
        System.arraycopy(words, 0, all, 0, words.length);
        all[words.length] = "--out";
        all[words.length + 1] = folder.resolve("outbox").toString();
        return Main.run(writer(out), writer(err), false, all);
    }

    private static PrintWriter writer(StringWriter to) {
        return new PrintWriter(to, true);
    }
}
