package bandwright.rules.paper;

import bandwright.rules.units.Box;
import bandwright.rules.units.Length;

/**
 * Where ink may stand on a sheet of paper from one printer, in millimetres of the printed paper from its lower-left
 * corner: the page less its margins, and less what a file page drawn at the printer's scale could not reach.
 */
public record PaperRoom(Paper paper, Printer printer, Box page, Box inside) {
    public static PaperRoom of(Paper paper, Printer printer) {
        Length height = paper.height().orElseThrow(() -> new IllegalArgumentException(paper.id() + " is a roll"));
        Box page = Box.of(paper.width(), height);
        // The file's page is as large as the paper; printed at scale 0.99 it reaches only 0.99 of the way up.
        Length right =
                paper.width().minus(paper.marginRight()).atMost(paper.width().times(printer.scaleX()));
        Length top = height.minus(paper.marginTop()).atMost(height.times(printer.scaleY()));
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
}
