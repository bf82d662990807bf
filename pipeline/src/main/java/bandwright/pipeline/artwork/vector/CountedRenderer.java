package bandwright.pipeline.artwork.vector;

import bandwright.pipeline.limits.Limits;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.rendering.PageDrawer;
import org.apache.pdfbox.rendering.PageDrawerParameters;

/** Draws a PDF's page and gives up after so many operators: forms that draw forms would go on for years. */
final class CountedRenderer extends PDFRenderer {
    private int operators;

    CountedRenderer(PDDocument document) {
        super(document);
    }

    @Override
    protected PageDrawer createPageDrawer(PageDrawerParameters parameters) throws IOException {
        return new Drawer(parameters);
    }

    private final class Drawer extends PageDrawer {
        Drawer(PageDrawerParameters parameters) throws IOException {
            super(parameters);
        }

        @Override
        protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
            if (++operators > Limits.PDF_OPERATORS || Thread.currentThread().isInterrupted()) {
                throw new TooMuch();
            }
            super.processOperator(operator, operands);
        }

        /** The library passes over whatever an operator throws as a checked exception. */
        @Override
        protected void operatorException(Operator operator, List<COSBase> operands, IOException e) throws IOException {
            if (e instanceof TooMuch) {
                throw e;
            }
            super.operatorException(operator, operands, e);
        }
    }

    static final class TooMuch extends IOException {
        private static final long serialVersionUID = 1L;
    }
}
