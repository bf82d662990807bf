package bandwright.pipeline.write;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** A share in percent with one decimal, where it has one: 6.5 %, 8 %. */
public final class ShareText {
    private ShareText() {}

    public static String of(double share) {
        BigDecimal percent = BigDecimal.valueOf(share * 100)
                .setScale(1, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return (percent.scale() < 0 ? percent.setScale(0) : percent).toPlainString() + " %";
    }
}
