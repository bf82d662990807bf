package bandwright.pipeline.write.setup;

import bandwright.pipeline.type.Captions;
import bandwright.pipeline.type.Outline;
import bandwright.pipeline.write.list.Faces;
import bandwright.pipeline.write.list.Style;
import bandwright.pipeline.write.list.Text;
import bandwright.pipeline.write.pdf.Canvas;
import bandwright.pipeline.write.pdf.Inks;
import bandwright.pipeline.write.sheets.PrintSettings;
import bandwright.pipeline.write.sheets.PrintedPaper;
import bandwright.rules.Shop;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/**
 * The transfers of a trial: true size, mirrored once, cut at their ticks like a run's; what is written beside them stands
 * outside the cut line and at least the trim gap off every swatch.
 */
final class TrialSheets {
    private static final double TICK = 0.15;
    private static final double TICK_LENGTH = 3.5;

    private final SwatchStrip strip;
    private final PaperRoom room;
    private final TrialGrid grid;
    private final double border;
    private final double gap;
    private final Captions captions = new Captions();

    /**
     * One transfer.
     *
     * @param name what stands in its picture
     * @param labels what is written under it, the longest first
     */
    record Transfer(Swatches.Name name, List<String> labels) {
        Transfer {
            labels = List.copyOf(labels);
        }
    }

    TrialSheets(SwatchStrip strip, PaperRoom room, Shop shop) {
        this.strip = strip;
        this.room = room;
        this.border = shop.trimBorder().mm();
        this.gap = Math.max(shop.trimGap().mm(), border);
        this.grid = TrialGrid.of(strip.box(), gap, room.inside());
    }

    boolean fits() {
        return grid.count() > 0;
    }

    int pages(int transfers) {
        return (transfers + grid.count() - 1) / grid.count();
    }

    List<PDPage> pages(List<Transfer> transfers, String title, PDDocument document, Faces faces) throws IOException {
        Inks inks = new Inks(document, room.printer().profile());
        List<PDPage> pages = new ArrayList<>();
        int all = pages(transfers.size());
        for (int page = 0; page < all; page++) {
            int from = page * grid.count();
            List<Transfer> here = transfers.subList(from, Math.min(transfers.size(), from + grid.count()));
            Canvas canvas = new Canvas();
            enter(canvas);
            head(canvas, faces, Words.say("trial.sheet", title, page + 1, all));
            for (int i = 0; i < here.size(); i++) {
                picture(canvas, here.get(i).name(), i, inks);
                ticks(canvas, i);
                label(canvas, faces, here.get(i).labels(), i);
            }
            pages.add(canvas.page(document, room.page().width(), room.page().height()));
        }
        return pages;
    }

    private void label(Canvas canvas, Faces faces, List<String> labels, int place) {
        // Between the ticks at both ends.
        Length room = Length.mm(grid.pitchX() - 2 * TrialGrid.SIDE);
        Length x = Length.mm(grid.left(place) + 2);
        Length y = Length.mm(grid.lower(place, gap) - gap - 3);
        labels.stream()
                .filter(label -> !faces.width(label, Style.SMALL).longerThan(room))
                .findFirst()
                .ifPresent(label -> faces.set(canvas, label, Style.SMALL, x, y));
    }

    private void enter(Canvas canvas) {
        PrintedPaper.of(room).enter(canvas);
        Box inside = room.inside();
        if (grid.isTurned()) {
            canvas.concat(0, 1, -1, 0, inside.right(), inside.y());
        } else {
            canvas.concat(1, 0, 0, 1, inside.x(), inside.y());
        }
    }

    private void head(Canvas canvas, Faces faces, String title) {
        String words = title + "  " + String.join(" ", PrintSettings.of(room));
        double y = grid.height() - 0.5;
        for (String line : faces.lines(Text.of(words, Style.SMALL), Length.mm(grid.width()))) {
            y -= Style.SMALL.leading().mm();
            faces.set(canvas, line, Style.SMALL, Length.ZERO, Length.mm(y));
        }
    }

    /** Flipped left to right about the middle of its box. */
    private void picture(Canvas canvas, Swatches.Name name, int place, Inks inks) throws IOException {
        canvas.save();
        double right = grid.left(place) + strip.box().width().mm();
        canvas.concat(-1, 0, 0, 1, Length.mm(right), Length.mm(grid.lower(place, gap)));
        for (int copy = 0; copy < strip.copies(); copy++) {
            for (Swatches.Inked shape : Swatches.of(strip.left(copy), strip.scale(), name, captions)) {
                canvas.ink(inks.of(shape.colour())).fill(strip.laid(shape.outline()));
            }
        }
        canvas.restore();
    }

    /** They lengthen the cut line beyond its corners, from where the gap of the swatches ends. */
    private void ticks(Canvas canvas, int place) {
        canvas.save().black(1);
        canvas.concat(1, 0, 0, 1, Length.mm(grid.left(place)), Length.mm(grid.lower(place, gap)));
        double high = strip.height();
        for (double v : new double[] {-border, high + border}) {
            tick(canvas, -gap - TICK_LENGTH, v - TICK / 2, TICK_LENGTH, TICK);
            tick(canvas, strip.width() + gap, v - TICK / 2, TICK_LENGTH, TICK);
        }
        for (double u : new double[] {-border, strip.width() + border}) {
            tick(canvas, u - TICK / 2, -gap - TICK_LENGTH / 2, TICK, TICK_LENGTH / 2);
            tick(canvas, u - TICK / 2, high + gap, TICK, TICK_LENGTH / 2);
        }
        canvas.restore();
    }

    private void tick(Canvas canvas, double u, double v, double width, double height) {
        Box box = new Box(Length.mm(u), Length.mm(v), Length.mm(width), Length.mm(height));
        canvas.fill(strip.laid(Outline.of(box)));
    }
}
