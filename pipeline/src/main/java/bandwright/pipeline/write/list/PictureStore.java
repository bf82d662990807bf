package bandwright.pipeline.write.list;

import bandwright.pipeline.write.pdf.Canvas;
import bandwright.pipeline.write.thumb.Thumbnail;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/** The small pictures of one list: each is in the file once, however often it is shown. */
final class PictureStore {
    private final PDDocument document;
    private final Map<Integer, PDImageXObject> byNumber = new HashMap<>();

    PictureStore(PDDocument document) {
        this.document = document;
    }

    /** Draws it over the unit square. */
    void draw(Canvas canvas, Thumbnail thumbnail) {
        PDImageXObject image = byNumber.computeIfAbsent(thumbnail.number(), number -> image(thumbnail));
        canvas.draw("Small" + thumbnail.number(), image);
    }

    private PDImageXObject image(Thumbnail thumbnail) {
        try (ByteArrayInputStream jpeg = new ByteArrayInputStream(thumbnail.bytes())) {
            return new PDImageXObject(
                    document, jpeg, COSName.DCT_DECODE, thumbnail.width(), thumbnail.height(), 8, PDDeviceRGB.INSTANCE);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
