package bandwright.pipeline.write.index;

import bandwright.pipeline.size.Unit;
import bandwright.pipeline.write.PlanShapes;
import bandwright.rules.Shop;
import bandwright.rules.blanks.BandSum;
import bandwright.rules.blanks.PlacePlan;
import bandwright.rules.words.Words;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;

/** Where a piece's picture stands, drawn: its cup from above and its wall unrolled; and the sum of its band in words. */
final class PlanPicture {
    private static final int HIGH = 40;
    private static final int WIDE = 160;
    private static final double RADIUS = 12;

    private PlanPicture() {}

    static void write(Html html, Unit unit, Shop shop) {
        PlacePlan plan = PlacePlan.of(
                unit.matched().blank(), unit.band(), unit.matched().design().placement());
        String words =
                Words.say("index.plan", unit.matched().design().placement().word());
        html.open("svg", "class", "plan", "viewBox", "0 0 " + WIDE + " " + HIGH, "role", "img", "aria-label", words);
        if (!unit.matched().blank().form().isFlat()) {
            ring(html, plan);
        }
        unrolled(html, plan);
        html.close("svg");
        BandSum sum = BandSum.of(unit.matched().blank(), unit.matched().source(), unit.band(), shop.unit());
        html.line("p", Words.say("index.band", sum.around(), sum.up()), "class", "sum");
    }

    /** SVG counts downwards, so the cup is turned over: its handle stays at the top. */
    private static void ring(Html html, PlacePlan plan) {
        AffineTransform place = new AffineTransform(RADIUS, 0, 0, -RADIUS, 22, 24);
        path(html, PlanShapes.wall(), place, "wall");
        if (plan.hasHandle()) {
            path(html, PlanShapes.handle(), place, "wall");
        }
        path(html, PlanShapes.arc(plan.band(), 1.15), place, "band");
        plan.pictures().forEach(picture -> path(html, PlanShapes.arc(picture, 1.15), place, "printed"));
    }

    private static void unrolled(Html html, PlacePlan plan) {
        box(html, plan.band(), "band");
        plan.pictures().forEach(picture -> box(html, picture, "printed"));
        box(html, new PlacePlan.Stretch(0, 1), "wall");
        if (plan.hasHandle()) {
            box(html, new PlacePlan.Stretch(0, 0.03), "handle");
            box(html, new PlacePlan.Stretch(0.97, 1), "handle");
        }
    }

    private static void box(Html html, PlacePlan.Stretch part, String kind) {
        double wide = WIDE - 52;
        boolean isHandle = kind.equals("handle");
        html.open(
                        "rect",
                        "class",
                        kind,
                        "x",
                        Html.number(48 + wide * part.from()),
                        "y",
                        isHandle ? "19" : "14",
                        "width",
                        Html.number(wide * (part.to() - part.from())),
                        "height",
                        isHandle ? "10" : "20")
                .close("rect");
    }

    private static void path(Html html, Shape shape, AffineTransform place, String kind) {
        StringBuilder d = new StringBuilder();
        double[] p = new double[6];
        for (PathIterator i = shape.getPathIterator(place); !i.isDone(); i.next()) {
            switch (i.currentSegment(p)) {
                case PathIterator.SEG_MOVETO -> points(d.append('M'), p, 2);
                case PathIterator.SEG_LINETO -> points(d.append('L'), p, 2);
                case PathIterator.SEG_QUADTO -> points(d.append('Q'), p, 4);
                case PathIterator.SEG_CUBICTO -> points(d.append('C'), p, 6);
                default -> d.append('Z');
            }
        }
        html.open("path", "class", kind, "d", d.toString().strip()).close("path");
    }

    private static void points(StringBuilder d, double[] p, int count) {
        for (int i = 0; i < count; i++) {
            d.append(Html.number(p[i])).append(' ');
        }
    }
}
