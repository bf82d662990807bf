package bandwright.pipeline.write.proofs;

import java.awt.Graphics2D;
import java.awt.RenderingHints;

/** Drawing with smooth edges, at the places that were asked for. */
final class Smooth {
    private Smooth() {}

    static void on(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }
}
