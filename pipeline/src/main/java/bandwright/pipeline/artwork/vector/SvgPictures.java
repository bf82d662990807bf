package bandwright.pipeline.artwork.vector;

import bandwright.pipeline.artwork.Flaw;
import bandwright.pipeline.artwork.RefusedPicture;
import bandwright.pipeline.limits.Limits;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Base64;
import java.util.Iterator;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/** The pictures inside an SVG: PNG and JPEG written into it, and no more of them than fits a small machine. */
final class SvgPictures {
    private static final String DATA = "data:image/";
    private long pixels;

    void take(String address) throws RefusedPicture {
        String kind = address.substring(0, Math.min(40, address.length())).toLowerCase(Locale.ROOT);
        if (!kind.startsWith("data:")) {
            throw new RefusedPicture(Flaw.LINKS);
        }
        int comma = address.indexOf(',');
        boolean isKnown =
                kind.startsWith(DATA + "png") || kind.startsWith(DATA + "jpeg") || kind.startsWith(DATA + "jpg");
        if (!isKnown || comma < 0 || !address.substring(0, comma).endsWith(";base64")) {
            throw new RefusedPicture(Flaw.BLENDING);
        }
        try {
            pixels += pixels(Base64.getMimeDecoder().decode(address.substring(comma + 1)));
        } catch (IOException | RuntimeException e) {
            throw new RefusedPicture(Flaw.DAMAGED); // whatever a decoder throws at a stranger's bytes
        }
        if (pixels > Limits.INNER_PIXELS) {
            throw new RefusedPicture(Flaw.TOO_MANY_PIXELS);
        }
    }

    private static long pixels(byte[] file) throws IOException {
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                throw new IOException("no reader");
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true, true);
                return (long) reader.getWidth(0) * reader.getHeight(0);
            } finally {
                reader.dispose();
            }
        }
    }
}
