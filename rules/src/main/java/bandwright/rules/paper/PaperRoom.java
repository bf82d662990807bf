package bandwright.rules.paper;

import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * Where ink may stand on a sheet of paper from one printer, in millimetres of the printed paper from its lower-left
 * corner: the page less its margins, and less what a file page drawn at the printer's scale could not reach. Of a roll it
 * is the longest page, or the page that was cut.
 */
public record PaperRoom(Paper paper, Printer printer, Box page, Box inside) {
    public static PaperRoom of(Paper paper, Printer printer) {
        return of(paper, printer, paper.height().orElseGet(() -> Roll.longest(paper)));
    }

    /** A page of a roll that is cut after that length. */
    public PaperRoom cutAfter(Length length) {
        return of(paper, printer, length);
    }

    private static PaperRoom of(Paper paper, Printer printer, Length height) {
        Box page = Box.of(paper.width(), height);
        // The file's page is as large as the paper; printed at scale 0.99 it reaches only 0.99 of the way up.
        Length right =
                paper.width().minus(paper.marginRight()).atMost(paper.width().times(printer.scaleX()));
        Length top = paper.isRoll()
                ? Roll.top(paper, printer, height)
                : height.minus(paper.marginTop()).atMost(height.times(printer.scaleY()));
        Length left = paper.marginLeft();
        if (printer.mirror() == MirrorBy.DRIVER) {
            // The driver flips the scaled page about the paper's middle, so what cannot be reached lies on the left.
            right = paper.width().minus(paper.marginRight());
            left = left.atLeast(paper.width().minus(paper.width().times(printer.scaleX())));
        }
        Box inside = new Box(
                left,
                paper.marginBottom(),
                right.minus(left).atLeast(Length.ZERO),
                top.minus(paper.marginBottom()).atLeast(Length.ZERO));
        return new PaperRoom(paper, printer, page, inside);
    }

    /** What the page costs; empty where the paper's cost is not known. */
    public Optional<BigDecimal> cost() {
        return paper.isRoll() ? paper.cost().map(metre -> Roll.cost(metre, page.height())) : paper.cost();
    }
}
