package bandwright.rules.paper;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * A printer of printers.csv.
 *
 * @param papers ids of papers that it takes, in its order
 * @param queue the system's queue that prints on it; empty = the system's default
 * @param profile how its colours are converted; empty where its driver does that
 * @param inkCost of a square metre of full ink; empty = not counted
 * @param scaleX measured / nominal across the page as fed
 * @param scaleY measured / nominal along the page as fed
 */
public record Printer(
        String id,
        List<String> papers,
        Optional<String> queue,
        MirrorBy mirror,
        Optional<PrinterProfile> profile,
        Optional<BigDecimal> inkCost,
        double scaleX,
        double scaleY,
        String note) {
    public Printer {
        papers = List.copyOf(papers);
    }
}
