package bandwright.pipeline.write.workbook;

import bandwright.pipeline.pixels.Sights;
import bandwright.pipeline.size.Layer;
import bandwright.pipeline.size.Transfer;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.size.colour.InkCover;
import bandwright.pipeline.size.colour.Print;
import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How much ink each unit takes; what is printed alike is worked out once. Empty where a picture can't be looked at. */
final class UnitInks {
    private static final double FLATNESS_MM = 0.05;

    private final Sights sights;
    private final Map<List<Layer>, Optional<Double>> pictures = new HashMap<>();
    private final Map<Transfer, Optional<Double>> known = new HashMap<>();

    UnitInks(Sights sights) {
        this.sights = sights;
    }

    /** In square millimetres of full ink. */
    Optional<Double> mm2(Unit unit) {
        return known.computeIfAbsent(unit.transfer(), this::mm2);
    }

    /** Of several units together, in whole square centimetres; empty for none. */
    Optional<BigDecimal> cm2(List<Unit> units) {
        List<Double> all = units.stream().flatMap(unit -> mm2(unit).stream()).toList();
        if (all.isEmpty() || all.size() < units.size()) {
            return Optional.empty();
        }
        double sum = all.stream().mapToDouble(Double::doubleValue).sum();
        return Optional.of(BigDecimal.valueOf(sum / 100).setScale(0, RoundingMode.HALF_UP));
    }

    private Optional<Double> mm2(Transfer transfer) {
        List<Layer> plain = transfer.layers().stream()
                .filter(layer -> !(layer instanceof Layer.Type))
                .toList();
        double letters = transfer.layers().stream()
                .filter(Layer.Type.class::isInstance)
                .mapToDouble(layer -> letters((Layer.Type) layer))
                .sum();
        return pictures.computeIfAbsent(
                        plain, layers -> Print.of(layers, sights::of).map(InkCover::mm2))
                .map(mm2 -> mm2 + letters);
    }

    private static double letters(Layer.Type type) {
        return InkCover.mm2(type.colour(), area(type.outline().path()));
    }

    /** By the shoelace formula; the inner outlines of letters run the other way round and are taken off. */
    private static double area(Shape shape) {
        double[] p = new double[6];
        double twice = 0;
        double x = 0;
        double y = 0;
        double startX = 0;
        double startY = 0;
        for (PathIterator path = shape.getPathIterator(null, FLATNESS_MM); !path.isDone(); path.next()) {
            boolean isStart = path.currentSegment(p) == PathIterator.SEG_MOVETO;
            if (isStart) {
                startX = p[0];
                startY = p[1];
            } else {
                boolean isEnd = path.currentSegment(p) == PathIterator.SEG_CLOSE;
                double toX = isEnd ? startX : p[0];
                double toY = isEnd ? startY : p[1];
                twice += x * toY - toX * y;
                p[0] = toX;
                p[1] = toY;
            }
            x = p[0];
            y = p[1];
        }
        return Math.abs(twice) / 2;
    }
}
