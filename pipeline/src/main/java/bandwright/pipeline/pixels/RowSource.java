package bandwright.pipeline.pixels;

import java.io.IOException;

/** The rows of a picture from the top, each with its PNG filter byte in front. */
public interface RowSource {
    /** Fills the array with the next row; an {@link IOException} when there is none. */
    void next(byte[] row) throws IOException;
}
