package bandwright.pipeline.watch;

import bandwright.pipeline.limits.Limits;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.zip.ZipFile;

/**
 * Whether a file that has stopped growing has its end. A zip has its directory last; of a text whose size was set before
 * it was filled the last byte is none.
 */
final class Wholeness {
    private static final int ZIP = 0x504B0304; // ISO/IEC 21320-1: a local file's signature, "PK" 3 4
    private static final int COMPOUND = 0xD0CF11E0; // MS-CFB 2.2
    private static final int SECTOR = 512;

    private Wholeness() {}

    static Seen of(Path file, long bytes) {
        if (bytes == 0) {
            return Seen.EMPTY;
        }
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            int start = start(channel);
            if (start == ZIP) {
                return zip(file, bytes);
            }
            boolean isWide = start >>> 16 == 0xFEFF || start >>> 16 == 0xFFFE; // UTF-16: half of its bytes are 0
            if (start == COMPOUND) {
                return bytes < SECTOR ? Seen.CUT_SHORT : Seen.WHOLE;
            }
            return isWide || last(channel, bytes) != 0 ? Seen.WHOLE : Seen.CUT_SHORT;
        } catch (IOException e) {
            return Seen.CLOSED;
        }
    }

    /** One that is larger than any order file is refused by the run, with the reason; its directory is not read. */
    private static Seen zip(Path file, long bytes) {
        if (bytes > Limits.ORDER_FILE_BYTES) {
            return Seen.WHOLE;
        }
        try (ZipFile zip = new ZipFile(file.toFile())) {
            return zip.size() >= 0 ? Seen.WHOLE : Seen.CUT_SHORT;
        } catch (IOException | IllegalArgumentException e) {
            return Seen.CUT_SHORT;
        }
    }

    private static int start(FileChannel channel) throws IOException {
        ByteBuffer four = ByteBuffer.allocate(4);
        channel.read(four, 0);
        return four.getInt(0);
    }

    private static byte last(FileChannel channel, long bytes) throws IOException {
        ByteBuffer one = ByteBuffer.allocate(1);
        return channel.read(one, bytes - 1) == 1 ? one.get(0) : 0;
    }
}
