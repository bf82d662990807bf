package bandwright.pipeline.artwork;

import com.twelvemonkeys.imageio.plugins.tiff.TIFFImageReaderSpi;
import com.twelvemonkeys.imageio.plugins.webp.WebPImageReaderSpi;
import com.twelvemonkeys.imageio.stream.ByteArrayImageInputStream;
import java.awt.image.BufferedImage;
import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/**
 * Unpacks pictures of the kinds that a library has to read, whole and with their own samples: no profile is applied. Its
 * classes are loaded by the first such picture.
 */
public final class OtherReaders {
    private OtherReaders() {}

    /** The first picture of a TIFF. */
    public static BufferedImage tiff(TiffHeader header, Path file) throws IOException {
        try (ImageInputStream in = header.plain().open(file)) {
            return read(new TIFFImageReaderSpi().createReaderInstance(null), in);
        }
    }

    /** The first picture of a WebP; the library reads it byte by byte, which a file on the disk is ten times too slow for. */
    public static BufferedImage webp(Path file) throws IOException {
        try (ImageInputStream in = new ByteArrayImageInputStream(Files.readAllBytes(file))) {
            return read(new WebPImageReaderSpi().createReaderInstance(null), in);
        }
    }

    @SuppressWarnings("CatchingUnchecked") // a stranger's bytes in a library: whatever it throws, the file is damaged
    private static BufferedImage read(ImageReader reader, ImageInputStream in) throws IOException {
        try {
            reader.setInput(in, true, true);
            ImageReadParam param = reader.getDefaultReadParam();
            param.setDestinationType(reader.getRawImageType(0));
            return reader.read(0, param);
        } catch (EOFException e) {
            throw new RefusedPicture(Flaw.CUT_SHORT);
        } catch (IOException | RuntimeException e) {
            throw new RefusedPicture(Flaw.DAMAGED);
        } finally {
            reader.dispose();
        }
    }
}
