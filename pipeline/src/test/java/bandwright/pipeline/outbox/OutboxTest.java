package bandwright.pipeline.outbox;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import bandwright.pipeline.RunId;
import bandwright.pipeline.write.OutFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OutboxTest {
    private static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);
    private static final RunId FIRST = new RunId(MONDAY, 1);
    private static final Check FINE = folder -> List.of();

    @TempDir
    Path shop;

    @Test
    void aRunStandsWholeUnderItsName() throws IOException {
        Path place = publish(List.of(text("run.json", "{}"), text("sheets/letter-01.pdf", "terns")), FINE);

        assertThat(place).isEqualTo(outbox().resolve("2026-03-02-1"));
        assertThat(place.resolve("run.json")).hasContent("{}");
        assertThat(place.resolve("sheets/letter-01.pdf")).hasContent("terns");
        assertThat(names()).containsExactly("2026-03-02-1", "ledger.lock");
    }

    @Test
    void aWriterMayCloseItsStream() throws IOException {
        OutFile closing = new OutFile("run.json", out -> {
            try (out) {
                out.write('7');
            }
        });

        assertThat(publish(List.of(closing), FINE).resolve("run.json")).hasContent("7");
    }

    @Test
    void theReadBackSeesEveryFileBeforeTheRunExists() {
        List<String> seen = new ArrayList<>();

        publish(List.of(text("run.json", "{}"), text("sheets/letter-01.pdf", "terns")), folder -> {
            seen.add(Files.readString(folder.resolve("sheets/letter-01.pdf")));
            seen.addAll(names());
            return List.of();
        });

        assertThat(seen).containsExactly("terns", ".making-2026-03-02-1", "ledger.lock");
    }

    @Test
    void aMismatchPublishesNothingAndSaysWhich() throws IOException {
        OutboxFault fault = faultOf(List.of(text("run.json", "{}")), folder -> List.of("sheet 3 is missing", "and 4"));

        assertThat(fault).hasMessageContaining("sheet 3 is missing").hasMessageContaining("2 differences");
        assertThat(names()).containsExactly("ledger.lock");
    }

    @Test
    void aReadBackThatFailsPublishesNothing() throws IOException {
        faultOf(List.of(text("run.json", "{}")), folder -> {
            throw new NoSuchFileException("held.xlsx");
        });

        assertThat(names()).containsExactly("ledger.lock");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 100, 65_535, 65_536, 65_537, 200_000})
    void aDiskThatFillsUpLeavesNothing(int bytes) throws IOException {
        OutboxFault fault = faultOf(
                List.of(text("sheets/a4-01.pdf", "terns"), new OutFile("sheets/a4-02.pdf", new FullDisk(bytes))), FINE);

        assertThat(fault).hasMessageContaining("full");
        assertThat(fault.cure()).contains("--out");
        assertThat(names()).containsExactly("ledger.lock");
    }

    @Test
    void aPictureThatIsGoneIsNotBlamedOnTheDisk() throws IOException {
        OutFile sheet = new OutFile("sheets/a4-01.pdf", out -> {
            throw new UncheckedIOException(new NoSuchFileException("artwork/storm-lamp.png"));
        });

        assertThat(faultOf(List.of(sheet), FINE))
                .hasMessageContaining("sheets/a4-01.pdf")
                .hasMessageContaining("storm-lamp.png");
        assertThat(names()).containsExactly("ledger.lock");
    }

    @Test
    void aRecordThatFailsAfterTheRenameDoesNotUnpublishTheRun() throws IOException {
        RunRecord fails = new RunRecord() {
            @Override
            public void begin() {}

            @Override
            public void keep() {
                throw OutboxFault.of("disk-full", outbox());
            }

            @Override
            public void takeBack() {
                throw new IllegalStateException("the run is there");
            }
        };

        try (Outbox outbox = open()) {
            outbox.publish(FIRST, List.of(text("run.json", "{}")), fails, FINE);
        }
        assertThat(names()).containsExactly("2026-03-02-1", "ledger.lock");
    }

    @Test
    void ourOwnMistakeLeavesNothingEither() throws IOException {
        OutFile broken = new OutFile("run.json", out -> {
            throw new IllegalStateException("a unit without a sheet");
        });

        assertThatThrownBy(() -> publish(List.of(text("a.txt", "a"), broken), FINE))
                .isInstanceOf(IllegalStateException.class);
        assertThat(names()).containsExactly("ledger.lock");
    }

    @Test
    void aFinishedRunIsNeverReplacedNotEvenAnEmptyFolder() throws IOException {
        Files.createDirectories(outbox().resolve("2026-03-02-1"));

        assertThat(faultOf(List.of(text("run.json", "{}")), FINE)).hasMessageContaining("2026-03-02-1");
        assertThat(outbox().resolve("2026-03-02-1")).isEmptyDirectory();
    }

    @Test
    void aFolderThatAppearsWhileTheRunIsMadeIsKept() {
        faultOf(List.of(text("run.json", "{}")), folder -> {
            Files.createDirectory(outbox().resolve("2026-03-02-1"));
            return List.of();
        });

        assertThat(outbox().resolve("2026-03-02-1")).isEmptyDirectory();
    }

    @Test
    void runsOfADayAreCountedOnFromTheHighest() throws IOException {
        for (String name : List.of("2026-03-02-9", "2026-03-02-10", "2026-03-03-77", "2026-03-02-011", "notes")) {
            Files.createDirectories(outbox().resolve(name));
        }

        try (Outbox outbox = open()) {
            assertThat(outbox.nextRun(MONDAY, 0)).isEqualTo(new RunId(MONDAY, 11));
            assertThat(outbox.nextRun(MONDAY.plusDays(2), 0)).isEqualTo(new RunId(MONDAY.plusDays(2), 1));
        }
    }

    @Test
    void peekingCreatesNothing() {
        assertThat(Outbox.peek(outbox(), MONDAY, 0)).isEqualTo(FIRST);
        assertThat(outbox()).doesNotExist();
    }

    @Test
    void leftoversOfAKilledRunGoAndNothingElseDoes() throws IOException {
        Path photos = Files.createDirectories(shop.resolve("photos"));
        Files.writeString(photos.resolve("rowing-club.jpg"), "jpeg");
        Path left = Files.createDirectories(outbox().resolve(".making-2026-03-02-4/sheets"));
        Files.writeString(left.resolve("a4-01.pdf"), "half");
        Files.createSymbolicLink(left.resolve("link"), photos);
        for (String name : List.of(".making-notes", "making-2026-03-02-4", ".making-2026-03-02-4x", "2026-03-01-1")) {
            Files.createDirectory(outbox().resolve(name));
        }
        Files.writeString(outbox().resolve(".making-2026-03-02-5"), "a file, no folder");
        Files.createSymbolicLink(outbox().resolve(".making-2026-03-02-6"), photos);

        open().close();

        assertThat(names())
                .containsExactlyInAnyOrder(
                        ".making-notes",
                        "making-2026-03-02-4",
                        ".making-2026-03-02-4x",
                        "2026-03-01-1",
                        ".making-2026-03-02-5",
                        ".making-2026-03-02-6",
                        "ledger.lock");
        assertThat(photos.resolve("rowing-club.jpg")).hasContent("jpeg");
    }

    @Test
    void anOutboxThatIsAFileIsNamedWithACure() throws IOException {
        Files.writeString(outbox(), "a shopping list");

        OutboxFault fault = catchThrowableOfType(OutboxFault.class, this::open);
        assertThat(fault).hasMessageContaining(outbox().toString());
        assertThat(fault.cure()).contains("--out");
        assertThat(outbox()).hasContent("a shopping list");
    }

    @Test
    void anOutboxInsideAFileIsNamedWithTheFile() throws IOException {
        Path file = Files.writeString(shop.resolve("tides.txt"), "high at noon");

        assertThatThrownBy(() -> Outbox.open(file.resolve("out/box"), line -> {}))
                .isInstanceOf(OutboxFault.class)
                .hasMessageContaining("tides.txt is a file");
    }

    @Test
    void aSecondRunWaitsAndSaysSoOnceAndGivesUp() {
        List<String> said = new ArrayList<>();
        try (Outbox first = open()) {
            OutboxFault fault = catchThrowableOfType(OutboxFault.class, () -> Outbox.open(outbox(), 3, said::add));

            assertThat(fault).hasMessageContaining("Another run");
            assertThat(said).hasSize(1);
            assertThat(first.nextRun(MONDAY, 0)).isEqualTo(FIRST);
        }
    }

    @Test
    void aSecondRunGoesOnWhenTheFirstEnds() {
        Outbox first = open();

        Outbox second = Outbox.open(outbox(), 3, line -> first.close());

        assertThat(second.nextRun(MONDAY, 0)).isEqualTo(FIRST);
        second.close();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "/etc/hosts",
                "../ledger.db",
                "sheets/../../x",
                "sheets//a",
                "sheets/",
                "./a",
                "C:x",
                "a\\b",
                "a\0",
                "proofs/ ",
                "proofs/x.",
                "a\nb",
                "con?"
            })
    void noNameLeadsOutOfTheRun(String name) throws IOException {
        assertThatIllegalArgumentException().isThrownBy(() -> publish(List.of(text(name, "x")), FINE));
        assertThat(names()).containsExactly("ledger.lock");
    }

    @Test
    void twoFilesOfOneNameAreRefused() throws IOException {
        faultOf(List.of(text("run.json", "1"), text("run.json", "2")), FINE);
        assertThat(names()).containsExactly("ledger.lock");
    }

    private static final RunRecord NO_RECORD = new NoRecord();

    private Path outbox() {
        return shop.resolve("outbox");
    }

    private Outbox open() {
        return Outbox.open(outbox(), 1, line -> {});
    }

    private Path publish(List<OutFile> files, Check readBack) {
        try (Outbox outbox = open()) {
            return outbox.publish(FIRST, files, NO_RECORD, readBack);
        }
    }

    private OutboxFault faultOf(List<OutFile> files, Check readBack) {
        return catchThrowableOfType(OutboxFault.class, () -> publish(files, readBack));
    }

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.list(outbox())) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    private static OutFile text(String name, String text) {
        return new OutFile(name, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    }
}
