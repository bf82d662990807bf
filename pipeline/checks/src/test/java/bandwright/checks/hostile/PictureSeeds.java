package bandwright.checks.hostile;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** Small sound pictures of every kind and packing that the JDK can write. */
final class PictureSeeds {
    private static final int WIDTH = 40;
    private static final int HEIGHT = 24;
    private static final int[] KINDS = {
        BufferedImage.TYPE_INT_RGB,
        BufferedImage.TYPE_INT_ARGB,
        BufferedImage.TYPE_BYTE_GRAY,
        BufferedImage.TYPE_USHORT_GRAY,
        BufferedImage.TYPE_BYTE_INDEXED,
        BufferedImage.TYPE_BYTE_BINARY
    };

    private PictureSeeds() {}

    static List<byte[]> png() throws IOException {
        List<byte[]> all = new ArrayList<>();
        for (int kind : KINDS) {
            all.add(written("png", drawn(kind), "", false));
        }
        all.add(written("png", drawn(BufferedImage.TYPE_INT_ARGB), "", true));
        all.add(written("png", drawn(BufferedImage.TYPE_BYTE_INDEXED), "", true));
        return all;
    }

    static List<byte[]> jpeg() throws IOException {
        List<byte[]> all = new ArrayList<>();
        for (boolean isProgressive : new boolean[] {false, true}) {
            all.add(written("jpeg", drawn(BufferedImage.TYPE_INT_RGB), "JPEG", isProgressive));
            all.add(written("jpeg", drawn(BufferedImage.TYPE_BYTE_GRAY), "JPEG", isProgressive));
        }
        all.add(inks());
        all.add(turned(all.get(0)));
        return all;
    }

    static List<byte[]> gif() throws IOException {
        return List.of(
                written("gif", drawn(BufferedImage.TYPE_BYTE_INDEXED), "", false),
                written("gif", drawn(BufferedImage.TYPE_BYTE_INDEXED), "", true),
                written("gif", drawn(BufferedImage.TYPE_BYTE_BINARY), "", false));
    }

    static List<byte[]> tiff() throws IOException {
        List<byte[]> all = new ArrayList<>();
        for (String packing : List.of("", "LZW", "Deflate", "PackBits", "JPEG")) {
            all.add(written("tiff", drawn(BufferedImage.TYPE_INT_RGB), packing, false));
        }
        for (String packing : List.of("CCITT T.4", "CCITT T.6", "CCITT RLE")) {
            all.add(written("tiff", drawn(BufferedImage.TYPE_BYTE_BINARY), packing, false));
        }
        for (int kind : KINDS) {
            all.add(written("tiff", drawn(kind), "LZW", false));
        }
        return all;
    }

    /** A lossy picture of 32 x 16 in eight stripes; no library here writes the format. */
    static List<byte[]> webp() {
        return List.of(
                Base64.getDecoder()
                        .decode("UklGRo4AAABXRUJQVlA4IIIAAADwBQCdASogABAALk02m02hJCQkBABMS2AF2XgMoE4A/qv5Ab3/n6u6AfzPK/"
                                + "7JACY/VX1IQBkJwAD+/vOkanzrmtFXjrUWHaULX/68vgP/Pr/Fubd/l+tZ53ea4D9ob7rI653ftBLoEpY/"
                                + "+cg7t2d6S+5+uCJdj7YXs8+mlQQZ0AAA"),
                Lossless.webp(8, 6));
    }

    static BufferedImage drawn(int kind) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, kind);
        Graphics2D g = image.createGraphics();
        g.setPaint(new GradientPaint(0, 0, new Color(30, 60, 120), WIDTH, HEIGHT, new Color(240, 200, 90, 120)));
        g.fillOval(2, 2, WIDTH - 4, HEIGHT - 4);
        g.dispose();
        return image;
    }

    private static byte[] written(String format, BufferedImage image, String packing, boolean isProgressive)
            throws IOException {
        ImageWriter writer = ImageIO.getImageWriters(ImageTypeSpecifier.createFromRenderedImage(image), format)
                .next();
        ImageWriteParam param = writer.getDefaultWriteParam();
        if (!packing.isEmpty()) {
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionType(packing);
        }
        if (isProgressive) {
            param.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
        }
        return written(writer, new IIOImage(image, null, null), param);
    }

    private static byte[] written(ImageWriter writer, IIOImage image, ImageWriteParam param) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            writer.write(null, image, param);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    /** Four inks: the JDK writes such samples if nobody says what they mean. */
    private static byte[] inks() throws IOException {
        WritableRaster raster = Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, WIDTH, HEIGHT, 4, null);
        for (int i = 0; i < WIDTH * HEIGHT; i++) {
            raster.setPixel(i % WIDTH, i / WIDTH, new int[] {i % 256, 255 - i % 256, 90, 10});
        }
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        return written(writer, new IIOImage(raster, null, null), writer.getDefaultWriteParam());
    }

    /** With a camera's tag: seen turned by a quarter (Exif 2.3, 4.6.4: orientation 6). */
    private static byte[] turned(byte[] jpeg) {
        byte[] exif = {
            (byte) 0xFF,
            (byte) 0xE1,
            0,
            34,
            'E',
            'x',
            'i',
            'f',
            0,
            0,
            'M',
            'M',
            0,
            42,
            0,
            0,
            0,
            8,
            0,
            1,
            1,
            0x12,
            0,
            3,
            0,
            0,
            0,
            1,
            0,
            6,
            0,
            0,
            0,
            0,
            0,
            0
        };
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        out.writeBytes(exif);
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }
}
