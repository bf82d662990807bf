package bandwright.pipeline.artwork;

import java.io.Closeable;
import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.zip.CRC32;

/** A picture file's bytes by their place, big-endian; a place beyond the end is an {@link EOFException}. */
public final class PictureBytes implements Closeable {
    private static final int WINDOW = 1 << 16;

    private final FileChannel channel;
    private final long size;
    private final ByteBuffer window = ByteBuffer.allocateDirect(WINDOW);
    private long windowAt;

    private PictureBytes(FileChannel channel, long size) {
        this.channel = channel;
        this.size = size;
        window.limit(0);
    }

    public static PictureBytes open(Path path) throws IOException {
        FileChannel channel = FileChannel.open(path);
        return new PictureBytes(channel, channel.size());
    }

    public long size() {
        return size;
    }

    public int u8(long at) throws IOException {
        if (at < windowAt || at >= windowAt + window.limit()) {
            fill(at);
        }
        return window.get((int) (at - windowAt)) & 0xFF;
    }

    public int u16(long at) throws IOException {
        return u8(at) << 8 | u8(at + 1);
    }

    public long u32(long at) throws IOException {
        return (long) u16(at) << 16 | u16(at + 2);
    }

    /** The low byte first, as TIFF may, and WebP and GIF always have it. */
    int u16le(long at) throws IOException {
        return u8(at) | u8(at + 1) << 8;
    }

    /** The low byte first. */
    long u32le(long at) throws IOException {
        return u16le(at) | (long) u16le(at + 2) << 16;
    }

    /** Four or more letters at a place. */
    String ascii(long at, int length) throws IOException {
        return new String(bytes(new Span(at, length)), StandardCharsets.ISO_8859_1);
    }

    /** A stretch of a size that was checked before. */
    public byte[] bytes(Span span) throws IOException {
        if (span.end() > size) {
            throw new EOFException();
        }
        byte[] out = new byte[Math.toIntExact(span.length())];
        int done = 0;
        while (done < out.length) {
            u8(span.at() + done);
            int from = (int) (span.at() + done - windowAt);
            int some = Math.min(out.length - done, window.limit() - from);
            window.get(from, out, done, some);
            done += some;
        }
        return out;
    }

    long crc(Span span) throws IOException {
        CRC32 crc = new CRC32();
        for (long at = span.at(); at < span.end(); at = windowAt + window.limit()) {
            u8(at);
            int from = (int) (at - windowAt);
            crc.update(window.duplicate().position(from).limit((int) Math.min(window.limit(), from + span.end() - at)));
        }
        return crc.getValue();
    }

    private void fill(long at) throws IOException {
        if (at < 0 || at >= size) {
            throw new EOFException();
        }
        window.clear();
        while (window.hasRemaining() && channel.read(window, at + window.position()) > 0) {
            // until the window is full or the file ends
        }
        window.flip();
        windowAt = at;
        if (window.limit() == 0) {
            throw new EOFException();
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
