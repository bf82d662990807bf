package bandwright.pipeline.shop;

import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.Paper;
import bandwright.rules.paper.Printer;
import bandwright.rules.units.Length;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Papers and printers for a test. */
public final class SamplePaper {
    private SamplePaper() {}

    /** With the same margin on all four sides; an empty height is a roll. */
    public static Paper of(
            String id, String name, Length width, Optional<Length> height, Length margin, Optional<BigDecimal> cost) {
        return new Paper(id, name, width, height, Optional.empty(), margin, margin, margin, margin, cost, "");
    }

    public static Paper roll(
            String id, Length width, Optional<Length> longest, Length margin, Optional<BigDecimal> cost) {
        return new Paper(id, id, width, Optional.empty(), longest, margin, margin, margin, margin, cost, "");
    }

    public static Printer printer(String id, List<String> papers, MirrorBy mirror) {
        return printer(id, papers, mirror, 1, 1);
    }

    public static Printer printer(String id, List<String> papers, MirrorBy mirror, double scaleX, double scaleY) {
        return new Printer(
                id, papers, Optional.empty(), mirror, Optional.empty(), Optional.empty(), scaleX, scaleY, "");
    }
}
