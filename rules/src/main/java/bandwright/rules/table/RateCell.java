package bandwright.rules.table;

import bandwright.rules.units.Amount;
import java.util.Optional;

/** Reads how fast something gets warmer or cooler: 10 C/min, 18 F/min. */
final class RateCell {
    private static final double LEAST = 0.1;
    private static final double MOST = 500;

    private RateCell() {}

    /** Degrees Celsius a minute. */
    static Optional<Double> read(Cell cell) {
        Optional<Double> rate = Amount.parse(cell.text()).flatMap(RateCell::celsius);
        return rate.filter(degrees -> degrees >= LEAST && degrees <= MOST).isPresent() ? rate : cell.fault("rate");
    }

    private static Optional<Double> celsius(Amount amount) {
        return switch (amount.unit().replace(" ", "").replace("\u00b0", "")) {
            case "c/min" -> Optional.of(amount.value());
            case "f/min" -> Optional.of(amount.value() / 1.8);
            default -> Optional.empty();
        };
    }
}
