package bandwright.pipeline.watch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Drops are moved within the inbox, and nothing is ever overwritten. */
final class PutAwayTest {
    @TempDir
    private Path folder;

    private Path inbox;
    private PutAway putAway;

    @BeforeEach
    void anInbox() throws IOException {
        inbox = Files.createDirectory(folder.resolve("inbox"));
        putAway = new PutAway(new DropFolder(inbox));
    }

    @Test
    void aNameThatIsTakenGetsANumber() throws Exception {
        for (String words : new String[] {"first", "second", "third"}) {
            Files.writeString(inbox.resolve("orders.csv"), words);
            assertThat(putAway.place(new Placing.Done(seen("orders.csv"), "2026-03-02-1")))
                    .isTrue();
        }
        Path done = inbox.resolve("done/2026-03-02-1");
        assertThat(done.resolve("orders.csv")).hasContent("first");
        assertThat(done.resolve("orders (2).csv")).hasContent("second");
        assertThat(done.resolve("orders (3).csv")).hasContent("third");
        if (Files.getFileStore(done).supportsFileAttributeView("posix")) {
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(done)))
                    .isEqualTo("rwx------");
        }
    }

    @Test
    void whatIsNotTakenHasItsReasonBeside() throws Exception {
        Files.writeString(inbox.resolve("list.pdf"), "?");
        putAway.place(new Placing.NotTaken(seen("list.pdf"), "It is no order file.", "Drop a CSV."));
        assertThat(inbox.resolve("not-taken/list.pdf")).exists();
        assertThat(inbox.resolve("not-taken/list.pdf.why.txt"))
                .content()
                .contains("list.pdf", "It is no order file.", "Drop a CSV.");
    }

    @Test
    void namesWithControlCharactersAndOfGreatLengthArePutAway() throws Exception {
        String control = "a\nb\u001B[2J.txt";
        String large = "ö".repeat(120) + ".txt"; // 244 bytes
        for (String name : new String[] {control, large, large}) {
            Files.writeString(inbox.resolve(name), "?");
            putAway.place(new Placing.NotTaken(seen(name), "why", "cure"));
        }
        try (Stream<Path> all = Files.list(inbox.resolve("not-taken"))) {
            assertThat(all.map(path -> path.getFileName().toString()))
                    .hasSize(6)
                    .contains(control, large, "a_b_[2J.txt.why.txt")
                    .allMatch(name -> name.getBytes(StandardCharsets.UTF_8).length <= 255)
                    .filteredOn(name -> name.endsWith(".why.txt"))
                    .hasSize(3)
                    .noneMatch(name -> name.codePoints().anyMatch(Character::isISOControl));
        }
    }

    @Test
    void aLinkInPlaceOfAFolderIsNotFollowed() throws Exception {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Files.createSymbolicLink(inbox.resolve("done"), elsewhere);
        Files.writeString(inbox.resolve("orders.csv"), "x");
        assertThatThrownBy(() -> putAway.place(new Placing.Done(seen("orders.csv"), "2026-03-02-1")))
                .isInstanceOf(Stop.class)
                .hasMessageContaining("done is a link");
        assertThat(elsewhere).isEmptyDirectory();
        assertThat(inbox.resolve("orders.csv")).exists();
    }

    @Test
    void aLinkIsMovedAndNotWhatItLeadsTo() throws Exception {
        Path target = Files.writeString(folder.resolve("secret.csv"), "x");
        Files.createSymbolicLink(inbox.resolve("orders.csv"), target);
        putAway.place(new Placing.NotTaken(seen("orders.csv"), "why", "cure"));
        assertThat(target).exists();
        assertThat(inbox.resolve("not-taken/orders.csv")).isSymbolicLink();
    }

    @Test
    void whatWasWrittenToSinceIsLeftForAnotherLook() throws Exception {
        Files.writeString(inbox.resolve("orders.csv"), "Order,SKU\nQ1,MUG");
        Sighting taken = seen("orders.csv");
        Files.writeString(inbox.resolve("orders.csv"), "Order,SKU\nQ1,MUG\nQ2,MUG");
        assertThat(putAway.place(new Placing.Done(taken, "2026-03-02-1"))).isFalse();
        assertThat(inbox.resolve("orders.csv")).exists();
    }

    @Test
    void aFolderThatGotAnotherFileSinceIsLeftToo() throws Exception {
        Path drop = Files.createDirectory(inbox.resolve("weekend"));
        Files.writeString(drop.resolve("a.csv"), "Order,SKU\nQ1,MUG");
        Sighting taken = seen("weekend");
        Files.writeString(drop.resolve("b.csv"), "Order,SKU\nQ2,MUG");
        assertThat(putAway.place(new Placing.Done(taken, "2026-03-02-1"))).isFalse();
        assertThat(drop.resolve("b.csv")).exists();
        assertThat(putAway.place(new Placing.Done(seen("weekend"), "2026-03-02-1")))
                .isTrue();
        assertThat(inbox.resolve("done/2026-03-02-1/weekend/b.csv")).exists();
    }

    private Sighting seen(String name) throws IOException {
        TreeMap<Path, Look> looks =
                new TreeMap<>(new Glance(inbox, List.of()).look(Map.of(), Instant.parse("2026-03-02T09:00:00Z")));
        return Objects.requireNonNull(Sighting.next(Map.of(), looks, true).get(inbox.resolve(name)), name);
    }
}
