package bandwright.pipeline.write.pdf;

import java.nio.ByteBuffer;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;

/**
 * A flat colour in the terms of one document.
 *
 * @param parts one byte a component
 */
public record Ink(COSBase space, ByteBuffer parts) {
    /** In a colour space of the document's own. */
    static Ink of(COSBase space, ByteBuffer parts) {
        return new Ink(space, parts.asReadOnlyBuffer());
    }

    /** In a printer's own three or four inks. */
    static Ink of(ByteBuffer parts) {
        return of(parts.remaining() == 4 ? COSName.DEVICECMYK : COSName.DEVICERGB, parts);
    }
}
