package bandwright.pipeline.write.sheets.check;

import bandwright.pipeline.write.pdf.Points;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFStreamEngine;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.contentstream.operator.OperatorName;
import org.apache.pdfbox.contentstream.operator.state.Concatenate;
import org.apache.pdfbox.contentstream.operator.state.Restore;
import org.apache.pdfbox.contentstream.operator.state.Save;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;

/** Follows a page's operators and notes where every transfer comes to lie on the printed paper. */
final class PageWalk extends PDFStreamEngine {
    /** What the writer calls the drawings of transfers. */
    private static final String TRANSFER = "Transfer";

    private final AffineTransform fileToPaper;
    private final List<FoundPicture> found = new ArrayList<>();

    private PageWalk(AffineTransform fileToPaper) {
        this.fileToPaper = fileToPaper;
        addOperator(new Concatenate(this));
        addOperator(new Save(this));
        addOperator(new Restore(this));
    }

    static List<FoundPicture> pictures(PDPage page, PaperRoom room) throws IOException {
        PageWalk walk = new PageWalk(fileToPaper(room));
        walk.processPage(page);
        return walk.found;
    }

    /** What the printer does to a file's page, in points: it scales it, and a driver that mirrors flips the paper. */
    static AffineTransform fileToPaper(PaperRoom room) {
        AffineTransform print = new AffineTransform();
        if (room.printer().mirror() == MirrorBy.DRIVER) {
            double middle = Points.of(room.page().width()) / 2;
            print.translate(middle, 0);
            print.scale(-1, 1);
            print.translate(-middle, 0);
        }
        print.scale(room.printer().scaleX(), room.printer().scaleY());
        return print;
    }

    @Override
    protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
        if (!operator.getName().equals(OperatorName.DRAW_OBJECT)) {
            super.processOperator(operator, operands);
        } else if (operands.get(0) instanceof COSName name && name.getName().startsWith(TRANSFER)) {
            PDXObject drawing = getResources().getXObject(name);
            if (drawing instanceof PDFormXObject form) {
                note(form);
            }
        }
    }

    private void note(PDFormXObject form) {
        AffineTransform toPaper = new AffineTransform(fileToPaper);
        toPaper.concatenate(getGraphicsState().getCurrentTransformationMatrix().createAffineTransform());
        toPaper.concatenate(form.getMatrix().createAffineTransform());
        PDRectangle drawn = form.getBBox();
        Rectangle2D box = toPaper.createTransformedShape(new Rectangle2D.Double(
                        drawn.getLowerLeftX(), drawn.getLowerLeftY(), drawn.getWidth(), drawn.getHeight()))
                .getBounds2D();
        found.add(new FoundPicture(
                new Box(length(box.getX()), length(box.getY()), length(box.getWidth()), length(box.getHeight())),
                toPaper.getScaleX(),
                toPaper.getShearY(),
                toPaper.getShearX(),
                toPaper.getScaleY(),
                form.getCOSObject()));
    }

    private static Length length(double points) {
        return Points.length(points);
    }
}
