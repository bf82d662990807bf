package bandwright.pipeline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.intake.format.Allowance;
import bandwright.pipeline.intake.format.Formats;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A buyer asks to be forgotten. */
final class ForgetCommandTest {
    private static final Path ARTWORK = Path.of("..", "inbox-sample", "artwork");
    private static final String HEADER = "Order,SKU,Design,Qty,Buyer,Street,Text: name\n";

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private Path inbox;
    private Path taken;
    private Path run;

    @BeforeEach
    void aMondayWithTwoBuyers() throws IOException {
        inbox = Files.createDirectories(folder.resolve("inbox"));
        Path orders = Files.writeString(
                inbox.resolve("orders.csv"),
                HEADER
                        + "Q1,MUG-11-W,tern,1,Ada Marsh,2 Tern Row,Adalind\nQ2,COAST-S,lamp,many,Ben Oar,3 Gull Lane,\n"
                        + "Q3,COAST-S,lamp,many,Cleo Fen,4 Rope Walk,\n");
        bandwright("run", orders.toString(), "--artwork", ARTWORK.toString(), "--date", "2026-03-02");
        run = folder.resolve("outbox/2026-03-02-1");
        assertThat(run).isDirectory();
        taken = Files.createDirectories(inbox.resolve("done/2026-03-02-1")).resolve("orders.csv");
        Files.move(orders, taken);
        out.getBuffer().setLength(0);
    }

    @Test
    void theLedgerForgetsAtOnceAndTheRestIsNamed() throws IOException {
        assertThat(ledger()).contains("Adalind");
        assertThat(forget("Q1")).isEqualTo(3);
        assertThat(ledger()).doesNotContain("Adalind");
        assertThat(out.toString())
                .contains(run + " holds it", taken + " holds it", "--delete", "In the ledger stay its number");
        assertThat(run).isDirectory();
        assertThat(taken).exists();
    }

    @Test
    void withDeleteNothingOnTheDiskHoldsIt() throws IOException {
        Path pictures = Files.createDirectories(inbox.resolve("artwork/orders"));
        Files.writeString(pictures.resolve("Q1.jpg"), "?");
        Files.writeString(pictures.resolve("Q1-2.png"), "?");
        Files.writeString(pictures.resolve("Q11.jpg"), "?");
        assertThat(forget("Q1", "--delete")).isZero();
        for (Path file : files(folder)) {
            String text = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
            assertThat(text).as(file.toString()).doesNotContain("Adalind", "Ada Marsh", "2 Tern Row");
        }
        assertThat(files(pictures)).containsExactly(pictures.resolve("Q11.jpg"));
        assertThat(files(run)).as("others are held there").containsExactly(run.resolve("held.xlsx"));
    }

    @Test
    void heldRowsOfOthersStayAndCanBeDroppedAgain() throws Exception {
        assertThat(forget("Q2", "--delete")).isZero();
        Path held = run.resolve("held.xlsx");
        String cells =
                Formats.read(held, new Allowance(), row -> 0).get(0).rows().toString();
        assertThat(cells).contains("Cleo Fen", "orders.csv |  | 4").doesNotContain("Ben Oar", "Gull Lane");
        out.getBuffer().setLength(0);
        bandwright("run", held.toString(), "--artwork", ARTWORK.toString(), "--date", "2026-03-03", "--dry-run");
        assertThat(out.toString()).contains("\"many\"");
    }

    @Test
    void whatWasForgottenIsNotPrintedAgain() throws IOException {
        Path again = Files.copy(taken, folder.resolve("again.csv"));
        forget("Q1", "--delete");
        out.getBuffer().setLength(0);
        bandwright("run", again.toString(), "--artwork", ARTWORK.toString(), "--date", "2026-03-03", "--dry-run");
        assertThat(out.toString()).contains("0 pieces on 0 sheets");
    }

    @Test
    void aFileThatWasNotTakenIsNamedAndStays() throws IOException {
        Path later = Files.writeString(inbox.resolve("later.csv"), "Order;SKU;Buyer\nQ1;COAST-S;Ada\nQ9;COAST-S;Dee\n");
        assertThat(forget("Q1", "--delete")).isEqualTo(3);
        assertThat(later).exists();
        assertThat(out.toString()).contains(later + " holds it, and wasn't taken");
    }

    @Test
    void anUnknownOrderIsWrongUsage() {
        assertThat(forget("Q77", "--delete")).isEqualTo(2);
        assertThat(err.toString()).contains("nothing is known of an order Q77");
        assertThat(run).isDirectory();
    }

    private String ledger() throws IOException {
        return new String(Files.readAllBytes(folder.resolve("outbox/ledger.db")), StandardCharsets.ISO_8859_1);
    }

    private static List<Path> files(Path place) throws IOException {
        try (var all = Files.walk(place)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private int forget(String order, String... more) {
        String[] words = new String[more.length + 4];
        words[0] = "forget";
        words[1] = order;
        words[2] = "--inbox";
        words[3] = inbox.toString();
        System.arraycopy(more, 0, words, 4, more.length);
        return bandwright(words);
    }

    private int bandwright(String... words) {
        String[] all = new String[words.length + 2];
        System.arraycopy(words, 0, all, 0, words.length);
        all[words.length] = "--out";
        all[words.length + 1] = folder.resolve("outbox").toString();
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), false, all);
    }
}
