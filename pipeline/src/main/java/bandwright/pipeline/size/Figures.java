package bandwright.pipeline.size;

import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Figures inside sentences: 242.90 x 95.25 mm (9.56 x 3.75 in), 35.01 %. */
final class Figures {
    private Figures() {}

    static String size(Length width, Length height) {
        return Words.say("size.box", width.mm2(), height.mm2(), inches(width), inches(height));
    }

    /** Rounded up to two decimals, so that what is beyond a limit never reads like the limit itself. */
    static String percentUp(double share) {
        return percent(share, RoundingMode.CEILING);
    }

    static String percent(double share) {
        return percent(share, RoundingMode.HALF_UP);
    }

    static String number(double value) {
        return plain(BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP));
    }

    /** Rounded down to two decimals, so that what is below a limit never reads like the limit itself. */
    static String numberDown(double value) {
        return plain(BigDecimal.valueOf(value).setScale(2, RoundingMode.FLOOR));
    }

    private static String percent(double share, RoundingMode rounding) {
        // Nine decimals first: 0.15 is a little more than fifteen hundredths in binary, but not for a person.
        BigDecimal exact = BigDecimal.valueOf(share * 100).setScale(7, RoundingMode.HALF_UP);
        return plain(exact.setScale(2, rounding));
    }

    private static String plain(BigDecimal value) {
        BigDecimal bare = value.stripTrailingZeros();
        return (bare.scale() < 0 ? bare.setScale(0, RoundingMode.UNNECESSARY) : bare).toPlainString();
    }

    private static String inches(Length length) {
        return BigDecimal.valueOf(length.inches())
                .setScale(2, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
