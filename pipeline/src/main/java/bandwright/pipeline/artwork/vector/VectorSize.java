package bandwright.pipeline.artwork.vector;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.Flaw;
import bandwright.pipeline.artwork.RefusedPicture;
import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * How large vector artwork is, in thousandths of a point, once it has shown that it can be drawn: as shapes, as a part
 * of a PDF and as pixels. What is drawn smaller than 100 points or larger than 5,000 counts as that, for its shape alone
 * matters: it can be printed at any size.
 */
public record VectorSize(int width, int height) {
    private static final double PARTS = 1000;
    private static final double LEAST = 100;
    private static final double MOST = 5000;

    /** The longer side of a trial drawing in pixels. */
    private static final double TRIAL = 200;

    public static VectorSize read(ArtworkFile.Kind kind, Path path) throws IOException {
        return Patience.wait(() -> {
            try (VectorArtwork artwork = VectorArtwork.open(kind, path)) {
                tryOut(artwork);
                return of(artwork.width(), artwork.height());
            }
        });
    }

    private static VectorSize of(double width, double height) throws RefusedPicture {
        double longer = Math.max(width, height);
        double scale = Math.max(LEAST, Math.min(MOST, longer)) / longer * PARTS;
        VectorSize size = new VectorSize((int) Math.round(width * scale), (int) Math.round(height * scale));
        if (Math.min(size.width, size.height) < 100) {
            throw new RefusedPicture(Flaw.NO_SIZE); // a thousand times as long as wide, or more
        }
        return size;
    }

    private static void tryOut(VectorArtwork artwork) throws IOException {
        double longer = Math.max(artwork.width(), artwork.height());
        try (PDDocument document = new PDDocument()) {
            artwork.shapes(); // first: it counts, and the others only draw
            artwork.pixels((int) Math.max(1, TRIAL * artwork.width() / longer), (int)
                    Math.max(1, TRIAL * artwork.height() / longer));
            artwork.form(document, deviceRgb());
        } catch (CountedRenderer.TooMuch e) {
            throw new RefusedPicture(Flaw.TOO_COMPLEX);
        } catch (RefusedPicture e) {
            throw e;
        } catch (IOException e) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
    }

    private static COSArray deviceRgb() {
        COSArray array = new COSArray();
        array.add(COSName.DEVICERGB);
        return array;
    }
}
