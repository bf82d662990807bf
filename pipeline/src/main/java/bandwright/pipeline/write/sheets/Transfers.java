package bandwright.pipeline.write.sheets;

import bandwright.pipeline.artwork.vector.InkedShape;
import bandwright.pipeline.size.Layer;
import bandwright.pipeline.size.Transfer;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.write.pdf.Bending;
import bandwright.pipeline.write.pdf.Bent;
import bandwright.pipeline.write.pdf.Canvas;
import bandwright.pipeline.write.pdf.InkedShapes;
import bandwright.pipeline.write.pdf.Pictures;
import bandwright.pipeline.write.pdf.PreparedPictures;
import bandwright.rules.blanks.Sector;
import bandwright.rules.paper.PrinterProfile;
import bandwright.rules.units.Box;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;

/** The transfers of one file: each drawn once, upright, and laid on the paper as often as it is needed. */
final class Transfers {
    /** How the names of transfers begin in a file; nothing else in it is named so, and the read-back counts on it. */
    static final String NAME = "Transfer";

    private final PDDocument document;
    private final Pictures pictures;
    private final double warpPpi;
    private final Map<Transfer, Stored> stored = new HashMap<>();

    private record Stored(String name, PDFormXObject form) {}

    Transfers(PDDocument document, PreparedPictures prepared, Optional<PrinterProfile> printer, double warpPpi) {
        this.document = document;
        this.warpPpi = warpPpi;
        this.pictures = new Pictures(document, prepared, printer);
    }

    void draw(Canvas canvas, Placed placed) throws IOException {
        Transfer transfer = placed.unit().transfer();
        Stored known = stored.get(transfer);
        if (known == null) {
            known = new Stored(NAME + (stored.size() + 1), upright(transfer));
            stored.put(transfer, known);
        }
        canvas.save();
        lay(canvas, placed);
        canvas.draw(known.name(), known.form()).restore();
    }

    /** Flipped left-right about the vertical axis of its upright box, then turned counter-clockwise into its place. */
    private static void lay(Canvas canvas, Placed placed) {
        Box box = placed.box();
        switch (placed.rotation()) {
            case R0 -> canvas.concat(-1, 0, 0, 1, box.right(), box.y());
            case R90 -> canvas.concat(0, -1, -1, 0, box.right(), box.top());
            case R180 -> canvas.concat(1, 0, 0, -1, box.x(), box.top());
            case R270 -> canvas.concat(0, 1, 1, 0, box.x(), box.y());
        }
    }

    private PDFormXObject upright(Transfer transfer) throws IOException {
        Canvas canvas = new Canvas();
        int count = 0;
        for (Layer layer : transfer.layers()) {
            if (layer instanceof Layer.Fill fill) {
                canvas.ink(pictures.ink(fill.colour()));
                transfer.sector()
                        .ifPresentOrElse(
                                sector -> canvas.fill(Bent.outline(fill.box(), sector)), () -> canvas.fill(fill.box()));
            } else if (layer instanceof Layer.Picture picture) {
                count++;
                draw(canvas, picture, transfer.sector(), "Picture" + count);
            } else if (layer instanceof Layer.Type type) {
                draw(canvas, type, transfer.sector());
            }
        }
        return canvas.form(document, transfer.box());
    }

    private void draw(Canvas canvas, Layer.Type type, Optional<Sector> sector) throws IOException {
        canvas.save();
        if (!type.clip().contains(type.ink())) {
            clip(canvas, type.clip(), sector);
        }
        canvas.ink(pictures.ink(type.colour()));
        canvas.fill(sector.map(bent -> Bent.outline(type.outline(), bent)).orElse(type.outline()))
                .restore();
    }

    private void draw(Canvas canvas, Layer.Picture picture, Optional<Sector> sector, String name) throws IOException {
        canvas.save();
        Optional<List<InkedShape>> shapes =
                sector.isPresent() || pictures.areConverted() ? pictures.shapes(picture.artwork()) : Optional.empty();
        if (shapes.isPresent()) {
            clip(canvas, picture.place().shared(picture.clip()), sector);
            InkedShapes.draw(canvas, shapes.get(), picture.place(), sector, pictures);
            canvas.restore();
            return;
        }
        if (sector.isPresent()) {
            Bending bending = Bending.of(picture, sector.get(), warpPpi);
            clip(canvas, bending.shown(), sector);
            canvas.stretchTo(bending.box()).draw(name, pictures.of(bending)).restore();
            return;
        }
        if (!picture.clip().contains(picture.place())) {
            canvas.clip(picture.clip());
        }
        canvas.stretchTo(picture.place());
        canvas.concatUnits(picture.artwork().orientation().toShown());
        canvas.draw(name, pictures.of(picture.artwork())).restore();
    }

    private static void clip(Canvas canvas, Box box, Optional<Sector> sector) {
        sector.ifPresentOrElse(bent -> canvas.clip(Bent.outline(box, bent)), () -> canvas.clip(box));
    }
}
