package bandwright.pipeline.write.thumb;

import java.nio.ByteBuffer;
import java.util.Base64;

/**
 * A small picture of a transfer as it will be seen on the blank, on white.
 *
 * @param number its own in the run, from 1
 * @param width pixels
 * @param height pixels
 * @param jpeg the picture's file
 */
public record Thumbnail(int number, int width, int height, ByteBuffer jpeg) {
    public Thumbnail {
        jpeg = jpeg.asReadOnlyBuffer();
    }

    /** The file's bytes. */
    public byte[] bytes() {
        byte[] bytes = new byte[jpeg.remaining()];
        jpeg.duplicate().get(bytes);
        return bytes;
    }

    /** The picture as an address that holds it: data:image/jpeg;base64,... */
    public String dataUri() {
        return "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(bytes());
    }
}
