package bandwright.checks.hostile;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

/** How a broken input is made to look whole from outside, so that more than its container's check is tried. */
enum Mending {
    NONE {
        @Override
        byte[] within(byte[] whole, int which, UnaryOperator<byte[]> change) {
            return change.apply(whole);
        }
    },
    /** One part of the archive is changed, and it is packed again. */
    ZIP {
        @Override
        byte[] within(byte[] whole, int which, UnaryOperator<byte[]> change) throws IOException {
            List<String> names = new ArrayList<>();
            List<byte[]> parts = new ArrayList<>();
            try (ZipFile in = ZipFile.builder().setByteArray(whole).get()) {
                for (ZipArchiveEntry entry : Collections.list(in.getEntriesInPhysicalOrder())) {
                    names.add(entry.getName());
                    parts.add(in.getInputStream(entry).readAllBytes());
                }
            }
            if (parts.isEmpty()) {
                return change.apply(whole);
            }
            int changed = Math.floorMod(which, parts.size());
            parts.set(changed, change.apply(parts.get(changed)));
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            try (ZipOutputStream out = new ZipOutputStream(bytes)) {
                for (int i = 0; i < parts.size(); i++) {
                    out.putNextEntry(new ZipEntry(names.get(i)));
                    out.write(parts.get(i));
                }
            }
            return bytes.toByteArray();
        }
    },
    /** The check sums of a PNG's chunks are made right again (ISO/IEC 15948, 5.3). */
    PNG {
        @Override
        byte[] within(byte[] whole, int which, UnaryOperator<byte[]> change) {
            byte[] changed = change.apply(whole).clone();
            for (long at = 8; at + 12 <= changed.length; ) {
                long length = u32(changed, (int) at);
                long sum = at + 8 + length;
                if (sum + 4 > changed.length) {
                    break;
                }
                CRC32 crc = new CRC32();
                crc.update(changed, (int) at + 4, (int) length + 4);
                for (int i = 0; i < 4; i++) {
                    changed[(int) sum + i] = (byte) (crc.getValue() >> (24 - 8 * i));
                }
                at = sum + 4;
            }
            return changed;
        }
    };

    /** Changes something within an input. */
    abstract byte[] within(byte[] whole, int which, UnaryOperator<byte[]> change) throws IOException;

    private static long u32(byte[] bytes, int at) {
        return ByteBuffer.wrap(bytes).getInt(at) & 0xFFFF_FFFFL;
    }
}
