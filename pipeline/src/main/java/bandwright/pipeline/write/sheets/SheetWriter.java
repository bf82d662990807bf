package bandwright.pipeline.write.sheets;

import bandwright.pipeline.RunId;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.tile.Sheet;
import bandwright.pipeline.write.SheetFile;
import bandwright.pipeline.write.pdf.Canvas;
import bandwright.pipeline.write.pdf.Lettering;
import bandwright.pipeline.write.pdf.PdfFile;
import bandwright.pipeline.write.pdf.PreparedPictures;
import bandwright.rules.Shop;
import bandwright.rules.paper.FlagLaw;
import bandwright.rules.units.Box;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.io.OutputStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/** Draws one file of sheets: pictures first, then what stands in the waste between them. */
final class SheetWriter {
    private static final String WASTE = "Waste";

    private final SheetFile file;
    private final RunId run;
    private final Shop shop;
    private final PDDocument document;
    private final Transfers transfers;
    private final Lettering lettering;

    private SheetWriter(SheetFile file, RunId run, Shop shop, PreparedPictures prepared, PDDocument document) {
        this.file = file;
        this.run = run;
        this.shop = shop;
        this.document = document;
        this.transfers = new Transfers(document, prepared, file.room().printer().profile(), shop.warpPpi());
        this.lettering = new Lettering(document);
    }

    static void write(SheetFile file, RunId run, Shop shop, PreparedPictures prepared, OutputStream out)
            throws IOException {
        String title = Words.say("sheets.title", file.shortName(), run);
        try (PDDocument document =
                PdfFile.create(run, file.name(), title, file.room().printer().profile())) {
            SheetWriter writer = new SheetWriter(file, run, shop, prepared, document);
            for (int i = 0; i < file.sheets().size(); i++) {
                document.addPage(writer.page(i));
            }
            PdfFile.save(document, out);
        }
    }

    private PDPage page(int index) throws IOException {
        Sheet sheet = file.sheets().get(index);
        Canvas canvas = new Canvas();
        PrintedPaper.of(sheet.room()).enter(canvas);
        for (Placed placed : sheet.placed()) {
            transfers.draw(canvas, placed);
        }
        Box page = sheet.room().page();
        canvas.draw(WASTE, waste(sheet, index).form(document, page));
        return canvas.page(document, page.width(), page.height());
    }

    /** All that stands between the pictures, as one drawing: who reads a page back need not walk through its letters. */
    private Canvas waste(Sheet sheet, int index) throws IOException {
        Canvas canvas = new Canvas();
        canvas.black(1);
        for (Placed placed : sheet.placed()) {
            Label.draw(canvas, lettering, placed, sheet.room(), shop);
        }
        Waste waste = Waste.of(sheet, FlagLaw.of(shop).border(), shop.trimGap());
        Marks marks = new Marks(canvas, lettering, waste, shop);
        if (index == 0) {
            marks.settings(sheet.room());
        }
        marks.ticks(sheet);
        if (index == 0) {
            marks.mirrorLine(sheet.room().printer());
            marks.bars();
        }
        marks.sheetLine(Words.say(
                "sheets.page", file.shortName(), index + 1, file.sheets().size(), run));
        return canvas;
    }
}
