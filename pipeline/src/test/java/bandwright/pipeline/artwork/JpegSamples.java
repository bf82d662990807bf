package bandwright.pipeline.artwork;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;

/** Makes small JPEGs and puts segments into them. */
public final class JpegSamples {
    private JpegSamples() {}

    /**
     * A picture of ramps and squares.
     *
     * @param type of BufferedImage
     */
    public static byte[] jpeg(int width, int height, int type, boolean progressive) throws IOException {
        BufferedImage image = new BufferedImage(width, height, type);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                image.setRGB(x, y, ((255 * x / width) << 16) | ((255 * y / height) << 8) | ((x / 8 + y / 8) % 2 * 200));
            }
        }
        ImageIO.setUseCache(false);
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ImageWriteParam param = writer.getDefaultWriteParam();
        param.setProgressiveMode(progressive ? ImageWriteParam.MODE_DEFAULT : ImageWriteParam.MODE_DISABLED);
        param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        param.setCompressionQuality(0.95f);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (var stream = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(stream);
            writer.write(null, new IIOImage(image, null, null), param);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }

    public static byte[] rgb(int width, int height) throws IOException {
        return jpeg(width, height, BufferedImage.TYPE_INT_RGB, false);
    }

    /** Puts a segment right behind the start of the picture. */
    public static byte[] with(byte[] jpeg, int marker, byte[] content) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        out.write(0xFF);
        out.write(marker);
        out.write((content.length + 2) >> 8);
        out.write(content.length + 2);
        out.writeBytes(content);
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    /** An Exif block that holds nothing but the orientation tag, in either byte order. */
    public static byte[] exif(int orientation, boolean littleEndian) {
        String motorola = "4d4d002a00000008" + "0001" + "0112000300000001" + "000" + orientation + "0000" + "00000000";
        String intel = "49492a0008000000" + "0100" + "1201030001000000" + "0" + orientation + "000000" + "00000000";
        byte[] tiff = java.util.HexFormat.of().parseHex((littleEndian ? intel : motorola).toLowerCase(Locale.ROOT));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        out.writeBytes(tiff);
        return out.toByteArray();
    }
}
