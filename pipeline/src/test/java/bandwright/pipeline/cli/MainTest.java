package bandwright.pipeline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person at the command line sees and a script gets. */
final class MainTest {
    private static final String SAMPLE = Path.of("..", "inbox-sample").toString();

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... words) {
        return Main.run(new PrintWriter(out), new PrintWriter(err), false, words);
    }

    private String outbox() {
        return folder.resolve("outbox").toString();
    }

    private String inbox() {
        return folder.resolve("inbox").toString();
    }

    private Path write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.resolveSibling("."));
        return Files.writeString(file, text);
    }

    @Test
    void theSampleNeedsAPersonAndSaysSoInOneLine() throws IOException {
        assertThat(run("run", SAMPLE, "--out", outbox(), "--date", "2026-03-02"))
                .isEqualTo(3);
        assertThat(out.toString())
                .containsOnlyOnce("\n")
                .contains("2026-03-02-1")
                .contains("5 held");
        assertThat(err.toString()).isEmpty();
        assertThat(names(folder.resolve("outbox"))).containsExactly("2026-03-02-1", "ledger.db", "ledger.lock");
        assertThat(names(folder.resolve("outbox/2026-03-02-1")))
                .contains("held.xlsx", "orders.xlsx", "run.json", "sheets");
    }

    @Test
    void aDryRunSaysTheSameAndWritesNothing() {
        assertThat(run("run", SAMPLE, "--out", outbox(), "--date", "2026-03-02", "--dry-run"))
                .isEqualTo(3);
        assertThat(out.toString())
                .contains("MUG-11-WH")
                .contains("Did you mean MUG-11-W?")
                .contains("5 held");
        assertThat(folder.resolve("outbox")).doesNotExist();
    }

    @Test
    void soundOrdersEndWithZero() throws IOException {
        write("inbox/a.csv", "Order,SKU,Design,Qty\nQ1,MUG-11-W,tern,1\n");
        int code = run("run", inbox(), "--out", outbox(), "--artwork", SAMPLE + "/artwork");
        assertThat(code).as(err.toString()).isZero();
        assertThat(out.toString()).contains("1 piece on 1 sheet, 0 held");
    }

    @Test
    void everythingHeldStillMakesARunFolderWithoutSheets() throws IOException {
        write("inbox/a.csv", "Order,SKU,Design,Qty\nQ1,NO-SUCH,tern,1\n");
        assertThat(run("run", inbox(), "--out", outbox(), "--date", "2026-03-02"))
                .isEqualTo(3);
        assertThat(names(folder.resolve("outbox/2026-03-02-1")))
                .contains("held.xlsx")
                .doesNotContain("sheets");
    }

    @Test
    void onlyCancelledRowsPublishNothing() throws IOException {
        write("inbox/a.csv", "Order,SKU,Design,Status\nQ1,MUG-11-W,tern,Cancelled\n");
        assertThat(run("run", inbox(), "--out", outbox())).isZero();
        assertThat(names(folder.resolve("outbox"))).containsExactly("ledger.lock");
    }

    @Test
    void aRefusedFileIsNamedAndTheOthersAreMade() throws IOException {
        write("inbox/bad.xlsx", "PK\u0003\u0004 cut short");
        write("inbox/good.csv", "Order,SKU,Design\nQ1,MUG-11-W,tern\n");
        assertThat(run("run", inbox(), "--out", outbox(), "--artwork", SAMPLE + "/artwork"))
                .isEqualTo(3);
        assertThat(err.toString()).startsWith("bad.xlsx: ").containsOnlyOnce("\n");
        assertThat(out.toString()).contains("1 piece on 1 sheet, 0 held");
    }

    @Test
    void nothingReadableEndsWithOne() throws IOException {
        write("inbox/tides.csv", "high,low\n1,2\n");
        assertThat(run("run", inbox(), "--out", outbox())).isEqualTo(1);
        assertThat(err.toString()).contains("tides.csv: ").contains("no file could be read as orders");
    }

    @Test
    void aMissingInboxEndsWithOneAndACure() {
        assertThat(run("run", folder.resolve("nowhere").toString(), "--out", outbox()))
                .isEqualTo(1);
        assertThat(err.toString())
                .containsOnlyOnce("\n")
                .contains("There is no ")
                .contains("Check the name");
    }

    @Test
    void aFaultyRulebookNamesEveryFaultAndMakesNothing() throws IOException {
        write("rules/papers.csv", "id,name,width,height\nletter,Letter,8.5 in,11 foot\nlegal,Legal,wide,14 in\n");
        int code = run(
                "run",
                SAMPLE,
                "--out",
                outbox(),
                "--rules",
                folder.resolve("rules").toString());
        assertThat(code).isEqualTo(1);
        assertThat(err.toString())
                .contains("papers.csv, row 2, column height")
                .contains("papers.csv, row 3, column width");
        assertThat(folder.resolve("outbox")).doesNotExist();
    }

    @Test
    void aPaperThatNoPrinterTakesIsWrongUsage() {
        assertThat(run("run", SAMPLE, "--out", outbox(), "--paper", "leter")).isEqualTo(2);
        assertThat(err.toString()).contains("Did you mean letter?");
    }

    @Test
    void wordsThatNobodyKnowsAreWrongUsage() {
        assertThat(run("rum")).isEqualTo(2);
        assertThat(run("run")).isEqualTo(2);
        assertThat(run()).isEqualTo(2);
        assertThat(run("run", SAMPLE, "--date", "Monday")).isEqualTo(2);
        assertThat(err.toString()).doesNotContain("Exception");
    }

    @Test
    void anOutboxThatIsAFileIsSaidWithACure() throws IOException {
        Path file = write("outbox", "not a folder");
        assertThat(run("run", SAMPLE, "--out", file.toString())).isEqualTo(1);
        assertThat(err.toString()).containsOnlyOnce("\n").startsWith("bandwright: nothing was made.");
    }

    @Test
    void helpIsThereForEveryCommand() {
        assertThat(run("--help")).isZero();
        assertThat(run("run", "--help")).isZero();
        assertThat(out.toString())
                .contains("INBOX")
                .contains("--dry-run")
                .contains("--paper")
                .contains("--print");
    }

    @Test
    void aStrangersTextNeverControlsTheTerminal() {
        assertThat(Terminal.harmless("a\u001b[2Jb\r\nc\u202ed")).isEqualTo("a [2Jb  c d");
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
