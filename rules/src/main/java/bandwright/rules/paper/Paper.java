package bandwright.rules.paper;

import bandwright.rules.units.Length;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * A paper of papers.csv as it is fed. An empty height is a roll.
 *
 * @param maxLength the longest page of a roll; empty = {@link Roll#LONGEST}
 * @param cost of a sheet, or of a metre of a roll
 */
public record Paper(
        String id,
        String name,
        Length width,
        Optional<Length> height,
        Optional<Length> maxLength,
        Length marginTop,
        Length marginRight,
        Length marginBottom,
        Length marginLeft,
        Optional<BigDecimal> cost,
        String note) {
    public boolean isRoll() {
        return height.isEmpty();
    }
}
