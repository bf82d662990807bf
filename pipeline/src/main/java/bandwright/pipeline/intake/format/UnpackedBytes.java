package bandwright.pipeline.intake.format;

import bandwright.pipeline.limits.Limits;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/**
 * Counts what comes out of a zip: all of it together, and what one tag, text or comment of its XML takes. A cell of
 * 32,767 characters is at most 330 kB even if each is written as a number, so 2 MB in one piece is no table of orders.
 */
final class UnpackedBytes {
    private static final int ONE_PIECE = 2_000_000;

    private long all;

    Stream of(InputStream in) {
        return new Stream(in);
    }

    /** The file unpacks to more than it may. */
    static final class TooMuch extends IOException {
        private static final long serialVersionUID = 1L;
    }

    final class Stream extends FilterInputStream {
        private long piece;

        private Stream(InputStream in) {
            super(in);
        }

        /** The XML reader got on by one piece. */
        void next() {
            piece = 0;
        }

        @Override
        public int read() throws IOException {
            int b = super.read();
            count(b < 0 ? 0 : 1);
            return b;
        }

        @Override
        public int read(byte[] bytes, int from, int length) throws IOException {
            int read = super.read(bytes, from, length);
            count(Math.max(0, read));
            return read;
        }

        private void count(int read) throws TooMuch {
            all += read;
            piece += read;
            if (all > Limits.UNPACKED_BYTES || piece > ONE_PIECE) {
                throw new TooMuch();
            }
        }
    }
}
