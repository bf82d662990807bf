package bandwright.rules.table;

import bandwright.rules.units.Amount;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;

/** Reads a length: 9 7/8 in, 9.875", 260 mm, 26 cm, or a bare number in the shop's unit. */
final class LengthCell {
    /** Nothing in this trade is longer than ten metres. */
    private static final Length MOST = Length.mm(10_000);

    /** The type point of desktop publishing: 1/72 in. */
    private static final int POINTS_PER_INCH = 72;

    private LengthCell() {}

    static Optional<Length> read(Cell cell, Plausible plausible) {
        Optional<Amount> amount = Amount.parse(cell.text());
        if (amount.isEmpty()) {
            return cell.fault("length", cell.units().length().word());
        }
        if (amount.get().isBare()) {
            return bare(cell, amount.get(), plausible);
        }
        Optional<LengthUnit> unit = LengthUnit.find(amount.get().unit());
        if (unit.isEmpty()) {
            return cell.fault("length.unit", Quoted.text(amount.get().unit()));
        }
        return checked(cell, unit.get().of(amount.get()), plausible.sign());
    }

    /** A size of type on the blank: 60 pt, or a bare 60. */
    static Optional<Length> typeSize(Cell cell) {
        Optional<Amount> amount = Amount.parse(cell.text());
        if (amount.isEmpty()) {
            return cell.fault("type-size");
        }
        Amount size = amount.get();
        if (size.isBare() || size.unit().equals("pt")) {
            Amount inches = new Amount(size.over(), size.under().multiply(BigDecimal.valueOf(POINTS_PER_INCH)), "in");
            return checked(cell, LengthUnit.IN.of(inches), Plausible.Sign.POSITIVE);
        }
        Optional<LengthUnit> unit = LengthUnit.find(size.unit());
        return unit.isEmpty()
                ? cell.fault("type-size")
                : checked(cell, unit.get().of(size), Plausible.Sign.POSITIVE);
    }

    private static Optional<Length> bare(Cell cell, Amount amount, Plausible plausible) {
        LengthUnit here = cell.units().length();
        Length length = here.of(amount);
        if (plausible.holds(length)) {
            return checked(cell, length, plausible.sign());
        }
        Optional<LengthUnit> meant = Arrays.stream(LengthUnit.values())
                .filter(unit -> plausible.holds(unit.of(amount)))
                .findFirst();
        String millimetres = length.mm2().stripTrailingZeros().toPlainString();
        return meant.isPresent()
                ? cell.fault(
                        "length.bare", here.word(), millimetres, meant.get().word())
                : cell.fault("length.absurd", here.word(), millimetres);
    }

    private static Optional<Length> checked(Cell cell, Length length, Plausible.Sign sign) {
        if (isTooLong(length)) {
            return cell.fault("length.huge");
        }
        if (length.isNegative() && sign != Plausible.Sign.ANY) {
            return cell.fault("negative");
        }
        if (length.isZero() && sign == Plausible.Sign.POSITIVE) {
            return cell.fault("zero");
        }
        return Optional.of(length);
    }

    private static boolean isTooLong(Length length) {
        return length.longerThan(MOST) || length.negated().longerThan(MOST);
    }
}
