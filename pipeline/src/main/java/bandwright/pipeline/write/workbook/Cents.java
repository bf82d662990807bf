package bandwright.pipeline.write.workbook;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Amounts to the cent whose sum is to the cent, too: 0.333, 0.333 and 0.334 are 0.33, 0.33 and 0.34. The sum is rounded
 * half up; every part is rounded down, and the cents that are missing go to those that lost most (largest remainders).
 */
final class Cents {
    /** What doubles blur; a cent is far coarser. */
    private static final int DIGITS = 8;

    private Cents() {}

    static List<BigDecimal> of(List<Double> parts) {
        List<BigDecimal> exact = parts.stream()
                .map(part -> BigDecimal.valueOf(part).setScale(DIGITS, RoundingMode.HALF_UP))
                .toList();
        List<BigDecimal> down = new ArrayList<>(
                exact.stream().map(part -> part.setScale(2, RoundingMode.FLOOR)).toList());
        List<Integer> byLoss = new ArrayList<>();
        for (int i = 0; i < exact.size(); i++) {
            byLoss.add(i);
        }
        byLoss.sort(Comparator.comparing((Integer i) -> exact.get(i).subtract(down.get(i)))
                .reversed()); // a stable sort: of equals the first
        BigInteger missing =
                sum(exact).setScale(2, RoundingMode.HALF_UP).subtract(sum(down)).unscaledValue();
        for (int i : byLoss.subList(0, missing.intValueExact())) {
            down.set(i, down.get(i).add(new BigDecimal("0.01")));
        }
        return List.copyOf(down);
    }

    static BigDecimal sum(List<BigDecimal> parts) {
        return parts.stream().reduce(new BigDecimal("0.00"), BigDecimal::add);
    }
}
