package bandwright.pipeline.watch;

import bandwright.pipeline.outbox.OwnOnly;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Set;

/**
 * OUTBOX/status.html: written when something has changed, and every minute, so that its time says that the watcher lives.
 * It is replaced at once; where the disk has no room for a second one it is written over, for which it has room.
 */
final class StatusFile {
    static final String FILE = "status.html";
    private static final String NEW = ".status.html.new";
    private static final Duration BEAT = Duration.ofMinutes(1);
    /** It is as large from the beginning as it will mostly be, so that there is room on a full disk. */
    private static final int ROOM = 48 << 10;

    private static final Set<StandardOpenOption> AFRESH =
            Set.of(StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING);

    private final Asked asked;
    private final Told told;
    private PastRuns runs = PastRuns.NONE;
    private Leftovers leftovers = Leftovers.NONE;
    /** All of the page that is on the disk, but its time. */
    private String shown = "";

    private Instant written = Instant.MIN;
    private Instant gathered = Instant.MIN;
    private boolean isRefused;

    StatusFile(Asked asked, Told told) {
        this.asked = asked;
        this.told = told;
    }

    /** Something was published or put away. */
    void refresh() {
        gathered = Instant.MIN;
    }

    void show(Status status, Pace pace) {
        if (!Files.isDirectory(asked.outbox())) {
            return;
        }
        if (isOver(gathered, status.at())) {
            runs = PastRuns.of(asked.outbox());
            leftovers = Leftovers.of(asked.inbox().resolve(DropFolder.NOT_TAKEN));
            gathered = status.at();
        }
        StatusPage page = new StatusPage(status, pace, runs, leftovers, asked);
        String timeless = page.page("");
        if (!timeless.equals(shown) || isOver(written, status.at())) {
            write(page.page(page.time()));
            shown = timeless;
            written = status.at();
        }
    }

    /** Also where the clock was set back. */
    private static boolean isOver(Instant then, Instant now) {
        return then.equals(Instant.MIN)
                || then.isAfter(now)
                || Duration.between(then, now).compareTo(BEAT) >= 0;
    }

    private void write(String page) {
        byte[] bytes = padded(page);
        Path file = asked.outbox().resolve(FILE);
        Path beside = asked.outbox().resolve(NEW);
        try {
            fill(beside, bytes, AFRESH);
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            isRefused = false;
        } catch (IOException full) {
            writeOver(file, beside, bytes);
        }
    }

    private void writeOver(Path file, Path beside, byte[] bytes) {
        try {
            Files.deleteIfExists(beside);
            fill(file, bytes, Set.of(StandardOpenOption.CREATE, StandardOpenOption.WRITE));
            isRefused = false;
        } catch (IOException e) {
            if (!isRefused) {
                told.line().accept(Words.say("watch.no-status", file));
            }
            isRefused = true;
        }
    }

    private static void fill(Path file, byte[] bytes, Set<StandardOpenOption> how) throws IOException {
        try (FileChannel channel = FileChannel.open(file, how, OwnOnly.file())) {
            ByteBuffer left = ByteBuffer.wrap(bytes);
            while (left.hasRemaining()) {
                channel.write(left);
            }
            channel.truncate(bytes.length);
        }
    }

    private static byte[] padded(String page) {
        byte[] bytes = page.getBytes(StandardCharsets.UTF_8);
        int size = Math.max(ROOM, bytes.length);
        byte[] padded = new byte[size];
        Arrays.fill(padded, (byte) '\n');
        System.arraycopy(bytes, 0, padded, 0, bytes.length);
        return padded;
    }
}
