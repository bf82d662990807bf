package bandwright.pipeline.write.sheets;

import bandwright.pipeline.size.Transfer;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.tile.Placed;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import bandwright.rules.words.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * What a flag says about its unit.
 *
 * @param id also in the code beside it
 * @param blankName said only where there is room beside the sku
 */
record LabelText(
        String id, String piece, String sku, String blankName, String size, String design, String source, String load) {
    static LabelText of(Placed placed, LengthUnit unit) {
        Unit made = placed.unit();
        return new LabelText(
                made.id(),
                Words.say("sheets.label.piece", made.matched().line().order(), made.piece()),
                made.matched().blank().sku(),
                made.matched().blank().name(),
                size(made.transfer(), unit),
                made.matched().design().name(),
                Words.say("sheets.label.load", made.matched().source().id()),
                String.valueOf(placed.load()));
    }

    private static String size(Transfer transfer, LengthUnit unit) {
        return Words.say(
                "sheets.label.size", number(transfer.width(), unit), number(transfer.height(), unit), unit.word());
    }

    /** To a hundredth of an inch or centimetre, a tenth of a millimetre: as fine as a ruler is read. */
    static String number(Length length, LengthUnit unit) {
        return switch (unit) {
            case IN -> rounded(length.inches(), 2);
            case MM -> rounded(length.mm(), 1);
            case CM -> rounded(length.mm() / 10, 2);
        };
    }

    private static String rounded(double value, int decimals) {
        BigDecimal number = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return (number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros()).toPlainString();
    }
}
