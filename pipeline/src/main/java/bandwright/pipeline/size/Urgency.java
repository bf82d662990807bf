package bandwright.pipeline.size;

import bandwright.pipeline.intake.OrderLine;
import bandwright.rules.table.NaturalOrder;
import java.time.LocalDate;
import java.util.Comparator;

/** Whose turn it is: the earliest ship-by first and none last, then order date, order, line and piece. */
public final class Urgency {
    private static final Comparator<OrderLine> OF_LINE = Comparator.comparing(Urgency::lineShipBy)
            .thenComparing((OrderLine line) -> line.orderDate().orElse(LocalDate.MAX))
            .thenComparing(OrderLine::order, NaturalOrder.INSTANCE)
            .thenComparing(OrderLine::line, NaturalOrder.INSTANCE)
            .thenComparing(OrderLine::site);

    public static final Comparator<Unit> OF_UNIT = Comparator.comparing(Urgency::line, OF_LINE)
            .thenComparingInt(Unit::piece)
            .thenComparing(Unit::id);

    private Urgency() {}

    public static LocalDate shipBy(Unit unit) {
        return lineShipBy(line(unit));
    }

    private static LocalDate lineShipBy(OrderLine line) {
        return line.shipBy().orElse(LocalDate.MAX);
    }

    private static OrderLine line(Unit unit) {
        return unit.matched().line();
    }
}
