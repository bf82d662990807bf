package bandwright.pipeline.write.sheets;

import bandwright.pipeline.tile.LaidSector;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.write.pdf.Canvas;
import bandwright.rules.blanks.Sector;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Where to cut a cone's picture: at its corners the cut line's ends and arcs are lengthened, and along both arcs short
 * lines point at the apex from where the trim gap ends, so that scissors can follow the curve. A tick that would stand in
 * a picture's gap, a flag or a margin is shortened or left out.
 */
final class SectorTicks {
    private static final double[] LENGTHS = {4, 2.5, 1.5};
    private static final double STROKE = 0.15;

    /** Along an arc, from one tick to the next at most. [J] */
    private static final double EVERY = 30;

    /** Ticks begin where the gap ends; what a double loses on the way there is less. */
    private static final double HAIR = 1e-6;

    private final Sector sector;
    private final double border;
    private final double start;
    private final List<Tick> ticks = new ArrayList<>();

    /** Where it begins and which way it goes, in the flipped picture's upright box. */
    private record Tick(double x, double y, double dx, double dy) {}

    private SectorTicks(Sector sector, Length border, Length gap) {
        this.sector = sector;
        this.border = border.mm();
        // From the cut line outwards, the picture's own gap ends here.
        this.start = Math.max(gap.mm() - border.mm(), 0.5);
    }

    /** Draws those that have room, and takes it. */
    static void draw(
            Canvas canvas, Placed placed, LaidSector laid, Length border, Length gap, Waste waste, Length air) {
        SectorTicks all = new SectorTicks(laid.sector(), border, gap);
        all.atEnd(1);
        all.atEnd(-1);
        all.alongArcs();
        for (Tick tick : all.ticks) {
            for (double length : LENGTHS) {
                Box bounds = bounds(tick, length, laid.toPaper());
                if (all.isClear(tick, length) && waste.isFreeBeside(placed, bounds)) {
                    stroke(canvas, tick, length, laid.toPaper());
                    waste.take(bounds.grown(air.half()));
                    break;
                }
            }
        }
    }

    /** @param side 1 for the right end, -1 for the left one */
    private void atEnd(int side) {
        double sin = side * StrictMath.sin(sector.halfRadians());
        double cos = StrictMath.cos(sector.halfRadians());
        double outwards = side * cos;
        double across = -Math.abs(sin);
        for (double radius :
                new double[] {sector.outer().mm() + border, sector.inner().mm() - border}) {
            double way = radius > sector.outer().mm() ? 1 : -1;
            double x = radius * sin + border * outwards;
            double y = radius * cos + border * across;
            add(x + way * start * sin, y + way * start * cos, way * sin, way * cos);
            add(x + start * outwards, y + start * across, outwards, across);
        }
    }

    private void alongArcs() {
        double outer = sector.outer().mm() + border + start;
        double inner = sector.inner().mm() - border - start;
        int parts = (int) Math.ceil(2 * sector.halfRadians() * outer / EVERY);
        for (int i = 1; i < parts; i++) {
            double angle = sector.halfRadians() * (2.0 * i / parts - 1);
            double sin = StrictMath.sin(angle);
            double cos = StrictMath.cos(angle);
            add(outer * sin, outer * cos, sin, cos);
            add(inner * sin, inner * cos, -sin, -cos);
        }
    }

    /** Counted from the apex, its axis upwards. */
    private void add(double x, double y, double dx, double dy) {
        double up = sector.rimIsOuter() ? 1 : -1;
        ticks.add(new Tick(sector.apexX() + x, sector.apexY() + up * y, dx, up * dy));
    }

    /** Whether it keeps its distance from the picture's other end, too, which on a saucer comes round near to this one. */
    private boolean isClear(Tick tick, double length) {
        double least = border + start - HAIR;
        return distance(tick.x, tick.y) >= least
                && distance(tick.x + length * tick.dx, tick.y + length * tick.dy) >= least;
    }

    /** From a point outside the picture to it. */
    private double distance(double x, double y) {
        double up = sector.rimIsOuter() ? y - sector.apexY() : sector.apexY() - y;
        double across = Math.abs(x - sector.apexX());
        double beyond = StrictMath.atan2(across, up) - sector.halfRadians();
        double radius = Math.hypot(across, up);
        if (beyond <= 0) {
            return Math.max(radius - sector.outer().mm(), sector.inner().mm() - radius);
        }
        // The nearer end is a straight line that points at the apex.
        double along = radius * StrictMath.cos(beyond);
        double off =
                Math.max(Math.max(along - sector.outer().mm(), sector.inner().mm() - along), 0);
        return Math.hypot(off, radius * StrictMath.sin(beyond));
    }

    private static Box bounds(Tick tick, double length, AffineTransform toPaper) {
        Point2D from = toPaper.transform(new Point2D.Double(tick.x, tick.y), null);
        Point2D to = toPaper.transform(new Point2D.Double(tick.x + length * tick.dx, tick.y + length * tick.dy), null);
        Length x = Length.mm(Math.min(from.getX(), to.getX()) - STROKE / 2);
        Length y = Length.mm(Math.min(from.getY(), to.getY()) - STROKE / 2);
        return new Box(
                x,
                y,
                Length.mm(Math.abs(from.getX() - to.getX()) + STROKE),
                Length.mm(Math.abs(from.getY() - to.getY()) + STROKE));
    }

    private static void stroke(Canvas canvas, Tick tick, double length, AffineTransform toPaper) {
        AffineTransform along = new AffineTransform(toPaper);
        along.concatenate(new AffineTransform(tick.dx, tick.dy, -tick.dy, tick.dx, tick.x, tick.y));
        canvas.save()
                .concat(along)
                .fill(new Box(Length.ZERO, Length.mm(-STROKE / 2), Length.mm(length), Length.mm(STROKE)));
        canvas.restore();
    }
}
