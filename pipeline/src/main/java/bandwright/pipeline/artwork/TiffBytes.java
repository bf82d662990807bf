package bandwright.pipeline.artwork;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.stream.ImageInputStreamImpl;

/**
 * A TIFF as a reader may see it: the file's own bytes, but with one directory, which stands behind them and has nothing
 * except what the samples need. So directories that lead in circles, or notes of any size, are never looked at.
 *
 * @param at where the file ends and the directory begins
 */
public record TiffBytes(long at, boolean littleEndian, ByteBuffer directory) {
    private static final List<Integer> KEPT = List.of(
            TiffTag.WIDTH,
            TiffTag.HEIGHT,
            TiffTag.BITS,
            TiffTag.COMPRESSION,
            TiffTag.COLOUR,
            TiffTag.FILL_ORDER,
            TiffTag.STRIPS,
            TiffTag.SAMPLES,
            TiffTag.ROWS_A_STRIP,
            TiffTag.STRIP_BYTES,
            TiffTag.PLANES,
            TiffTag.FAX_3_OPTIONS,
            TiffTag.FAX_4_OPTIONS,
            TiffTag.PREDICTOR,
            TiffTag.PALETTE,
            TiffTag.TILE_WIDTH,
            TiffTag.TILE_HEIGHT,
            TiffTag.TILES,
            TiffTag.TILE_BYTES,
            TiffTag.INKS,
            TiffTag.EXTRA_SAMPLES,
            TiffTag.CHROMA_COEFFICIENTS,
            TiffTag.CHROMA_SUBSAMPLING,
            TiffTag.CHROMA_PLACE,
            TiffTag.BLACK_WHITE);

    private static final int HEADER = 8;

    /** The directory of those fields of a file that the samples need. */
    static TiffBytes of(TiffDirectory fields) throws IOException {
        List<TiffDirectory.Field> kept = new ArrayList<>();
        boolean isTiled = fields.has(TiffTag.TILES);
        for (int tag : KEPT) {
            boolean isOther = isTiled
                    ? tag == TiffTag.STRIPS || tag == TiffTag.STRIP_BYTES
                    : tag == TiffTag.TILE_WIDTH || tag == TiffTag.TILE_HEIGHT || tag == TiffTag.TILE_BYTES;
            if (!isOther) {
                fields.find(tag).ifPresent(kept::add);
            }
        }
        ByteBuffer out = ByteBuffer.allocate(2 + 12 * kept.size() + 4)
                .order(fields.isLittleEndian() ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        out.putShort((short) kept.size());
        for (TiffDirectory.Field field : kept) {
            out.putShort((short) field.tag()).putShort((short) field.type()).putInt(field.count());
            if (field.values().length() > 4) {
                out.putInt((int) field.values().at());
            } else {
                byte[] value = new byte[4];
                byte[] own = fields.bytes().bytes(field.values());
                System.arraycopy(own, 0, value, 0, own.length);
                out.put(value);
            }
        }
        out.putInt(0).flip();
        return new TiffBytes(fields.bytes().size(), fields.isLittleEndian(), out.asReadOnlyBuffer());
    }

    /** The bytes for a reader; the caller closes it. */
    ImageInputStreamImpl open(Path file) throws IOException {
        ByteBuffer head =
                ByteBuffer.allocate(HEADER).order(littleEndian ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        head.putShort((short) (littleEndian ? 0x4949 : 0x4D4D))
                .putShort((short) 42)
                .putInt((int) at);
        byte[] tail = new byte[directory.remaining()];
        directory.duplicate().get(tail);
        return new Stream(new RandomAccessFile(file.toFile(), "r"), head.array(), tail, at);
    }

    /** A new head, the file's middle, the directory. */
    private static final class Stream extends ImageInputStreamImpl {
        private final RandomAccessFile file;
        private final byte[] head;
        private final byte[] tail;
        private final long end;
        private final byte[] window = new byte[1 << 14];
        private long windowAt;
        private int windowLength;

        Stream(RandomAccessFile file, byte[] head, byte[] tail, long end) {
            this.file = file;
            this.head = head;
            this.tail = tail;
            this.end = end;
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
        }

        @Override
        public int read(byte[] into, int from, int length) throws IOException {
            checkClosed();
            bitOffset = 0;
            int some;
            if (streamPos < head.length) {
                some = copy(head, (int) streamPos, head.length, into, from, length);
            } else if (streamPos < end) {
                some = ofFile(into, from, length);
            } else {
                some = copy(tail, (int) (streamPos - end), tail.length, into, from, length);
            }
            streamPos += Math.max(0, some);
            return some;
        }

        private int ofFile(byte[] into, int from, int length) throws IOException {
            if (streamPos < windowAt || streamPos >= windowAt + windowLength) {
                file.seek(streamPos);
                windowAt = streamPos;
                windowLength = Math.max(0, file.read(window, 0, (int) Math.min(window.length, end - streamPos)));
            }
            return copy(window, (int) (streamPos - windowAt), windowLength, into, from, length);
        }

        private static int copy(byte[] of, int at, int end, byte[] into, int from, int length) {
            int some = Math.min(length, end - at);
            if (some <= 0) {
                return -1;
            }
            System.arraycopy(of, at, into, from, some);
            return some;
        }

        @Override
        public long length() {
            return end + tail.length;
        }

        @Override
        public void close() throws IOException {
            super.close();
            file.close();
        }
    }
}
