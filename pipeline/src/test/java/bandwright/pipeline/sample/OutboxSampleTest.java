package bandwright.pipeline.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import bandwright.pipeline.Flow;
import bandwright.pipeline.Run;
import bandwright.pipeline.intake.Inbox;
import bandwright.pipeline.intake.InboxFault;
import bandwright.pipeline.ledger.Ledger;
import bandwright.pipeline.outbox.Outbox;
import bandwright.pipeline.past.Memory;
import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * outbox-sample is what the run of inbox-sample makes; {@code -Doutbox.renew} makes it anew and fails that build, so that
 * somebody looks at it first.
 */
final class OutboxSampleTest {
    private static final Path INBOX = Path.of("..", "inbox-sample");
    private static final Path OUTBOX = Path.of("..", "outbox-sample");
    private static final double HUNDREDTH = 0.0101;
    private static final double MEAN_OF_CHANNELS = 1.5;

    @TempDir
    private Path fresh;

    @Test
    void theOutboxIsWhatTheSampleWeekendMakes() throws IOException, RulebookFaults, InboxFault {
        run();
        if (Boolean.getBoolean("outbox.renew")) {
            renew();
            fail("outbox-sample is made anew: look at every file, then build without -Doutbox.renew");
        }
        Map<String, Path> made = files(fresh);
        Map<String, Path> kept = files(OUTBOX);
        assertThat(made.keySet()).isEqualTo(kept.keySet());
        for (String name : made.keySet()) {
            compare(name, Files.readAllBytes(made.get(name)), Files.readAllBytes(kept.get(name)));
        }
    }

    @Test
    void aNumberOffByMoreAndAnotherWordAreSeen() {
        assertThat(alike("0 0 72.004 36 re f", "0 0 72 36 re f")).isTrue();
        assertThat(alike("0 0 72.02 36 re f", "0 0 72 36 re f")).isFalse();
        assertThat(alike("0 0 72 36 re f", "0 0 72 36 re")).isFalse();
        assertThat(alike("MUG-11-W", "MUG-15-W")).isFalse();
    }

    @Test
    void bothSamplesStaySmall() throws IOException {
        long bytes = 0;
        for (Path folder : List.of(INBOX, OUTBOX)) {
            for (Path file : files(folder).values()) {
                bytes += Files.size(file);
            }
        }
        assertThat(bytes).isLessThan(12_000_000);
    }

    private void run() throws IOException, RulebookFaults, InboxFault {
        Rulebook rules = Rulebook.read(Optional.empty());
        Flow.Request asked = new Flow.Request(Inbox.files(List.of(INBOX)), INBOX.resolve("artwork"), Optional.empty());
        Path outbox = fresh.resolve("outbox");
        try (Outbox place = Outbox.open(outbox, waiting -> {});
                Ledger ledger = Ledger.open(outbox)) {
            Run run =
                    Flow.decide(place.nextRun(LocalDate.of(2026, 3, 2), 0), asked, rules, Memory.NOTHING, stage -> {});
            Files.move(
                    Flow.publish(run, rules, place, ledger, stage -> {}),
                    fresh.resolve(run.id().toString()));
        }
        Files.delete(outbox.resolve("ledger.lock"));
        Files.delete(outbox.resolve(Ledger.FILE));
    }

    private void renew() throws IOException {
        for (Path old : files(OUTBOX).values()) {
            Files.delete(old);
        }
        for (Map.Entry<String, Path> file : files(fresh).entrySet()) {
            Path place = OUTBOX.resolve(file.getKey());
            Files.createDirectories(place.getParent());
            Files.copy(file.getValue(), place);
        }
    }

    private static void compare(String name, byte[] made, byte[] kept) throws IOException {
        DecodedFile now = DecodedFile.of(name, made);
        DecodedFile then = DecodedFile.of(name, kept);
        assertThat(now.texts().keySet()).as(name).isEqualTo(then.texts().keySet());
        now.texts().forEach((part, text) -> {
            if (!alike(text, then.texts().getOrDefault(part, ""))) {
                assertThat(text).as(name + ", " + part).isEqualTo(then.texts().getOrDefault(part, ""));
            }
        });
        assertThat(now.pictures().keySet()).as(name).isEqualTo(then.pictures().keySet());
        now.pictures().forEach((part, picture) -> assertThat(PictureDifference.of(
                        picture, Objects.requireNonNull(then.pictures().get(part))))
                .as(name + ", " + part)
                .isLessThan(MEAN_OF_CHANNELS));
    }

    /** Word by word; numbers may differ by a hundredth, a hundredth of a point in what is drawn. */
    private static boolean alike(String one, String other) {
        if (one.equals(other)) {
            return true;
        }
        String[] words = one.split("\\s+", -1);
        String[] others = other.split("\\s+", -1);
        boolean alike = words.length == others.length;
        for (int i = 0; alike && i < words.length; i++) {
            alike = words[i].equals(others[i]) || near(words[i], others[i]);
        }
        return alike;
    }

    private static boolean near(String one, String other) {
        try {
            return Math.abs(Double.parseDouble(one) - Double.parseDouble(other)) < HUNDREDTH;
        } catch (NumberFormatException e) {
            return false;
        }
    }

    private static Map<String, Path> files(Path folder) throws IOException {
        Map<String, Path> files = new TreeMap<>();
        if (Files.isDirectory(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                all.filter(Files::isRegularFile)
                        .forEach(file ->
                                files.put(folder.relativize(file).toString().replace('\\', '/'), file));
            }
        }
        return files;
    }
}
