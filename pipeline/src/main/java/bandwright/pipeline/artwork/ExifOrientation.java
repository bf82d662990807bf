package bandwright.pipeline.artwork;

import com.drew.lang.ByteArrayReader;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifReader;

/** The orientation tag of an Exif block; a block that can't be read leaves the picture as it is stored. */
final class ExifOrientation {
    /** Exif blocks stand in one JPEG segment; a larger one in a PNG isn't read. */
    static final int MOST_BYTES = 1 << 16;

    private ExifOrientation() {}

    /** @param start where the TIFF header begins in the block */
    @SuppressWarnings("CatchingUnchecked") // a stranger's bytes in a library: whatever it says, the picture is upright
    static Orientation of(byte[] exif, int start) {
        try {
            Metadata metadata = new Metadata();
            new ExifReader().extract(new ByteArrayReader(exif), metadata, start);
            ExifIFD0Directory main = metadata.getFirstDirectoryOfType(ExifIFD0Directory.class);
            Integer tag = main == null ? null : main.getInteger(ExifIFD0Directory.TAG_ORIENTATION);
            return tag == null ? Orientation.TOP_LEFT : Orientation.ofTag(tag);
        } catch (RuntimeException e) {
            return Orientation.TOP_LEFT;
        }
    }
}
