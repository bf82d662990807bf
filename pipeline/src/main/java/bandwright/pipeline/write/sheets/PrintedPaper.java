package bandwright.pipeline.write.sheets;

import bandwright.pipeline.write.pdf.Canvas;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.paper.Printer;
import bandwright.rules.units.Length;

/**
 * How the printed paper's millimetres are drawn in a file, so that everything else can be laid out as it will lie on the
 * paper. A printer that prints 99 mm for 100 gets a file drawn 1/0.99 larger about the page's lower-left corner; for a
 * driver that flips, the page is flipped beforehand about the paper's middle, so that it comes out as laid out.
 */
public record PrintedPaper(double acrossFactor, double upFactor, Length shift) {
    public static PrintedPaper of(PaperRoom room) {
        Printer printer = room.printer();
        double across = 1 / printer.scaleX();
        double up = 1 / printer.scaleY();
        return printer.mirror() == MirrorBy.DRIVER
                ? new PrintedPaper(-across, up, room.page().width().times(across))
                : new PrintedPaper(across, up, Length.ZERO);
    }

    /** Everything drawn from here on is laid out as it lies on the printed paper. */
    public void enter(Canvas canvas) {
        if (acrossFactor != 1 || upFactor != 1) {
            canvas.concat(acrossFactor, 0, 0, upFactor, shift, Length.ZERO);
        }
    }
}
