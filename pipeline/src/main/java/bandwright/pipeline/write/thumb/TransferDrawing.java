package bandwright.pipeline.write.thumb;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.size.Layer;
import bandwright.pipeline.size.Transfer;
import bandwright.rules.units.Box;
import bandwright.rules.units.Rgb;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Optional;
import java.util.function.Function;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** A transfer's layers drawn small and upright, one upon the other. */
final class TransferDrawing {
    /** Stands for a picture that can't be shown. */
    private static final Rgb GREY = new Rgb(200, 200, 200);

    private static final float QUALITY = 0.7f;

    private TransferDrawing() {}

    /** How many pixels show a millimetre if the longer side has that many. */
    static double pixelsPerMm(Transfer transfer, int side) {
        return side / Math.max(transfer.width().mm(), transfer.height().mm());
    }

    static Thumbnail draw(
            int number, Transfer transfer, Rgb base, int side, Function<ArtworkFile, Optional<SmallPicture>> pictures) {
        Canvas canvas = canvas(transfer, pixelsPerMm(transfer, side), layer -> pictures.apply(layer.artwork()));
        canvas.standOn(base);
        return new Thumbnail(number, canvas.width(), canvas.height(), ByteBuffer.wrap(jpeg(canvas.image())));
    }

    /** All that is printed, flat and upright, on white. */
    static Canvas canvas(Transfer transfer, double scale, Function<Layer.Picture, Optional<SmallPicture>> pictures) {
        int width = Math.max(1, (int) Math.round(transfer.width().mm() * scale));
        int height = Math.max(1, (int) Math.round(transfer.height().mm() * scale));
        Canvas canvas = new Canvas(width, height);
        for (Layer layer : transfer.layers()) {
            if (layer instanceof Layer.Fill fill) {
                canvas.fill(place(fill.box(), transfer, scale), fill.colour());
            } else if (layer instanceof Layer.Picture picture) {
                Rectangle2D clip = place(picture.clip(), transfer, scale);
                Rectangle2D place = place(picture.place(), transfer, scale);
                pictures.apply(picture)
                        .ifPresentOrElse(small -> canvas.draw(small, place, clip), () -> canvas.fill(clip, GREY));
            } else if (layer instanceof Layer.Type type) {
                AffineTransform toPixels = new AffineTransform(
                        scale, 0, 0, -scale, 0, transfer.height().mm() * scale);
                canvas.fill(
                        type.outline().path().createTransformedShape(toPixels),
                        type.colour(),
                        place(type.clip(), transfer, scale));
            }
        }
        return canvas;
    }

    /** A box in pixels, from the upper-left corner. */
    private static Rectangle2D place(Box box, Transfer transfer, double scale) {
        return new Rectangle2D.Double(
                box.x().mm() * scale,
                transfer.height().minus(box.top()).mm() * scale,
                box.width().mm() * scale,
                box.height().mm() * scale);
    }

    private static byte[] jpeg(BufferedImage image) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(QUALITY);
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), param);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
