package bandwright.pipeline.write.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.zip.Deflater;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;

/**
 * Stores a drawing's operators deflated, as the library would, but with one deflater for all drawings of a thread: a run has
 * a thousand small ones, and to make and to end a deflater (268 KB outside Java's memory) takes longer than what it packs.
 */
final class Operators {
    private static final int BUFFER = 1 << 13;

    /** It is reset before each drawing, so nothing of one reaches the next. */
    private static final ThreadLocal<Deflater> DEFLATER = ThreadLocal.withInitial(Deflater::new);

    private Operators() {}

    static void store(String operators, COSStream into) throws IOException {
        into.setItem(COSName.FILTER, COSName.FLATE_DECODE);
        Deflater deflater = DEFLATER.get();
        deflater.reset();
        deflater.setInput(operators.getBytes(StandardCharsets.US_ASCII));
        deflater.finish();
        byte[] packed = new byte[BUFFER];
        try (OutputStream out = into.createRawOutputStream()) {
            while (!deflater.finished()) {
                out.write(packed, 0, deflater.deflate(packed));
            }
        }
    }
}
