package bandwright.rules.table;

import bandwright.rules.units.Amount;
import bandwright.rules.units.TimeText;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads plain numbers, percents, shares and times. */
final class NumberCell {
    private NumberCell() {}

    /** A number between two bounds; its unit's letter may stand behind it ({@code 120 V}). */
    static Optional<Double> number(Cell cell, String unit, double least, double most) {
        Optional<Double> number = Amount.parse(cell.text())
                .filter(amount -> amount.isBare() || amount.unit().equals(unit))
                .map(Amount::value)
                .filter(value -> value >= least && value <= most);
        return number.isPresent() ? number : cell.fault("number", plain(least), plain(most));
    }

    static Optional<Integer> integer(Cell cell, String unit, int least, int most) {
        Optional<Integer> number = Amount.parse(cell.text())
                .filter(amount -> amount.isBare() || amount.unit().equals(unit))
                .filter(amount -> amount.isWhole(1))
                .map(Amount::value)
                .filter(value -> value >= least && value <= most)
                .map(Double::intValue);
        return number.isPresent() ? number : cell.fault("integer", least, most);
    }

    /** A percentage, as a number of percent: 20 %, 20. */
    static Optional<Double> percent(Cell cell, double least, double most) {
        Optional<Double> percent = Amount.parse(cell.text())
                .filter(amount -> amount.isBare() || amount.unit().equals("%"))
                .map(Amount::value)
                .filter(value -> value >= least && value <= most);
        return percent.isPresent() ? percent : cell.fault("percent", plain(least), plain(most));
    }

    /** A share of one, written in percent: 3 % is 0.03. A bare 0.03 could be either and is asked back. */
    static Optional<Double> share(Cell cell, double mostPercent) {
        Optional<Amount> amount = Amount.parse(cell.text());
        double value = amount.map(Amount::value).orElse(0.0);
        if (amount.isPresent() && amount.get().isBare() && value > 0 && value < 1) {
            return cell.fault("share.bare", plain(Math.rint(value * 1e8) / 1e6));
        }
        return percent(cell, 0, mostPercent).map(percent -> percent / 100);
    }

    /** Whole seconds; nothing but 0 goes without its unit. */
    static Optional<Integer> seconds(Cell cell) {
        Optional<Amount> amount = Amount.parse(cell.text());
        if (amount.isPresent() && amount.get().isZero() && amount.get().isBare()) {
            return Optional.of(0);
        }
        if (amount.isPresent() && amount.get().over().signum() < 0) {
            return cell.fault("negative");
        }
        if (amount.isPresent() && amount.get().isBare()) {
            return cell.fault("time.bare");
        }
        OptionalInt seconds = TimeText.parse(cell.text());
        return seconds.isPresent() ? Optional.of(seconds.getAsInt()) : cell.fault("time");
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
