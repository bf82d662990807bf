package bandwright.pipeline.write.sheets.check;

import bandwright.pipeline.tile.Rotation;
import bandwright.rules.units.Box;
import org.apache.pdfbox.cos.COSBase;

/**
 * A transfer as a file has it, seen on the printed paper.
 *
 * @param acrossX where the picture's own left-to-right points on the paper, as a unit vector
 * @param upX where its own foot-to-rim points
 * @param drawing the drawing in the file that is used for it
 */
record FoundPicture(Box box, double acrossX, double acrossY, double upX, double upY, COSBase drawing) {
    private static final double STRAIGHT = 1e-4;

    /** Flipping turns left-to-right about: (-1, 0); then both directions are turned counter-clockwise. */
    boolean isFlippedAndTurned(Rotation rotation) {
        double angle = Math.toRadians(rotation.degrees());
        return near(acrossX, -Math.cos(angle))
                && near(acrossY, -Math.sin(angle))
                && near(upX, -Math.sin(angle))
                && near(upY, Math.cos(angle));
    }

    private static boolean near(double one, double other) {
        return Math.abs(one - other) < STRAIGHT;
    }
}
