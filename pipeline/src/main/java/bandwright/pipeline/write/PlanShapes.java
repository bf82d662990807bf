package bandwright.pipeline.write;

import bandwright.rules.blanks.PlacePlan.Stretch;
import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Path2D;

/**
 * The shapes of a cup seen from above, its wall a circle of radius 1 about the origin, y upwards, the handle at the top.
 */
public final class PlanShapes {
    private static final double HANDLE_REACH = 0.5;
    private static final double HANDLE_HALF = 0.22;

    private PlanShapes() {}

    /** The wall. */
    public static Shape wall() {
        return arc(new Stretch(0, 1), 1);
    }

    /** A part of the wall, on a circle of another radius. */
    public static Shape arc(Stretch part, double radius) {
        // Java's arcs turn clockwise as y grows upwards, so their angles are negated.
        double start = -90 - 360 * part.from();
        double extent = -360 * (part.to() - part.from());
        return new Arc2D.Double(-radius, -radius, 2 * radius, 2 * radius, start, extent, Arc2D.OPEN);
    }

    /** The handle: a loop beyond the wall. */
    public static Shape handle() {
        Path2D loop = new Path2D.Double();
        double y = Math.sqrt(1 - HANDLE_HALF * HANDLE_HALF);
        loop.moveTo(-HANDLE_HALF, y);
        loop.lineTo(-HANDLE_HALF, 1 + HANDLE_REACH);
        loop.lineTo(HANDLE_HALF, 1 + HANDLE_REACH);
        loop.lineTo(HANDLE_HALF, y);
        return loop;
    }
}
