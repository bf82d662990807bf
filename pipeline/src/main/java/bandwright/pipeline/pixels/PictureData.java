package bandwright.pipeline.pixels;

import bandwright.pipeline.artwork.Span;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Where the packed bytes of a picture lie: stretches of a file, which are read only when a document stores them. */
public record PictureData(Path file, List<Span> spans) {
    public PictureData {
        spans = List.copyOf(spans);
    }

    /** A whole file. */
    public static PictureData whole(Path file) throws IOException {
        return new PictureData(file, List.of(new Span(0, Files.size(file))));
    }

    public long length() {
        return spans.stream().mapToLong(Span::length).sum();
    }

    /** The bytes; the caller closes it. */
    public InputStream open() throws IOException {
        return new Spans(new RandomAccessFile(file.toFile(), "r"), spans);
    }

    /** The stretches, one after the other. */
    private static final class Spans extends InputStream {
        private final RandomAccessFile file;
        private final List<Span> spans;
        private int next;
        private long left;

        Spans(RandomAccessFile file, List<Span> spans) {
            this.file = file;
            this.spans = spans;
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
        }

        @Override
        public int read(byte[] into, int at, int length) throws IOException {
            while (left == 0) {
                if (next == spans.size()) {
                    return -1;
                }
                file.seek(spans.get(next).at());
                left = spans.get(next++).length();
            }
            int some = file.read(into, at, (int) Math.min(left, length));
            if (some < 0) {
                throw new EOFException("a picture became shorter while it was read");
            }
            left -= some;
            return some;
        }

        @Override
        public void close() throws IOException {
            file.close();
        }
    }
}
