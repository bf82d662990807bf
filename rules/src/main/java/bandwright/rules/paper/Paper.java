package bandwright.rules.paper;

import bandwright.rules.units.Length;
import java.math.BigDecimal;
import java.util.Optional;

/** A paper of papers.csv as it is fed. An empty height is a roll. */
public record Paper(
        String id,
        String name,
        Length width,
        Optional<Length> height,
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
