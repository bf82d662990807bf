package bandwright.rules.table;

import bandwright.rules.units.Amount;
import bandwright.rules.units.Temperature;
import bandwright.rules.units.TemperatureUnit;
import java.util.Optional;

/** Reads a press temperature: 190 C, 375 F, 190 °C, or a bare number in the shop's unit. */
final class TemperatureCell {
    /** Between these a figure can be a press temperature at all; our judgement. */
    private static final Temperature LEAST = Temperature.celsius(60);

    private static final Temperature MOST = Temperature.celsius(260);

    /** Between these blanks are usually pressed: a bare number outside, that lies inside in the other unit, was meant so. */
    private static final Temperature USUAL_LEAST = Temperature.celsius(120);

    private static final Temperature USUAL_MOST = Temperature.celsius(240);

    private TemperatureCell() {}

    static Optional<Temperature> read(Cell cell) {
        Optional<Amount> amount = Amount.parse(cell.text());
        Optional<TemperatureUnit> unit = amount.flatMap(a -> unit(a, cell));
        if (amount.isEmpty() || unit.isEmpty()) {
            return cell.fault("temperature");
        }
        double degrees = amount.get().value();
        Temperature temperature = of(degrees, unit.get());
        TemperatureUnit other = unit.get() == TemperatureUnit.C ? TemperatureUnit.F : TemperatureUnit.C;
        boolean isOtherMeant = amount.get().isBare() && !isUsual(temperature) && isUsual(of(degrees, other));
        if (isPlausible(temperature) && !isOtherMeant) {
            return Optional.of(temperature);
        }
        return isPlausible(of(degrees, other))
                ? cell.fault("temperature.other", unit.get(), other)
                : cell.fault("temperature.absurd", unit.get());
    }

    private static Optional<TemperatureUnit> unit(Amount amount, Cell cell) {
        return switch (amount.unit().replace(" ", "")) {
            case "" -> Optional.of(cell.units().temperature());
            case "c", "°c", "\u2103", "degc" -> Optional.of(TemperatureUnit.C);
            case "f", "°f", "\u2109", "degf" -> Optional.of(TemperatureUnit.F);
            default -> Optional.empty();
        };
    }

    private static Temperature of(double degrees, TemperatureUnit unit) {
        return unit == TemperatureUnit.C ? Temperature.celsius(degrees) : Temperature.fahrenheit(degrees);
    }

    private static boolean isUsual(Temperature temperature) {
        return temperature.compareTo(USUAL_LEAST) >= 0 && temperature.compareTo(USUAL_MOST) <= 0;
    }

    private static boolean isPlausible(Temperature temperature) {
        return temperature.compareTo(LEAST) >= 0 && temperature.compareTo(MOST) <= 0;
    }
}
