package bandwright.pipeline.write.setup;

import bandwright.pipeline.RunId;
import bandwright.pipeline.write.list.Faces;
import bandwright.pipeline.write.pdf.PdfFile;
import bandwright.rules.blanks.Band;
import bandwright.rules.blanks.BandLaw;
import bandwright.rules.blanks.BandSum;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Form;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import bandwright.rules.units.TapeText;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * A strip of plain paper to be wrapped round a blank before one is spent: the band's outline at true size, not mirrored,
 * with its rim edge and the white up to the handle; and for a round blank a narrow tape that reads its circumference
 * through the handle. No ink of it is meant for a press.
 */
public final class FitStrip {
    private final Blank blank;
    private final HeatSource source;
    private final Band band;
    private final PaperRoom room;
    private final LengthUnit unit;
    private final StripShape shape;
    private final Tiles tiles;

    private FitStrip(Blank blank, HeatSource source, Band band, PaperRoom room, LengthUnit unit) {
        this.blank = blank;
        this.source = source;
        this.band = band;
        this.room = SetupSheet.notMirrored(room);
        this.unit = unit;
        this.shape = StripShape.of(blank, source, band);
        this.tiles = Tiles.of(shape.box(), this.room);
    }

    /** The strip of a blank's band on a heat source, on that paper. */
    public static FitStrip of(Blank blank, HeatSource source, Band band, PaperRoom room, LengthUnit unit) {
        return new FitStrip(blank, source, band, room, unit);
    }

    /** On how many sheets the strip itself lies; several are glued together. */
    public int count() {
        return tiles.count();
    }

    /** The paper's id. */
    public String paper() {
        return room.paper().id();
    }

    /** Whether the paper is so small that nobody would glue the sheets. */
    public boolean isTooLarge() {
        return tiles.isTooMany();
    }

    /** Writes the strip, then the tape and what to do with both. */
    public void write(RunId day, OutputStream out) throws IOException {
        try (PDDocument document = PdfFile.create(day, "strip-" + blank.sku(), title())) {
            OwnFile.mark(document, OwnFile.Kind.STRIP);
            Faces faces = new Faces(document);
            List<SetupSheet> sheets = new ArrayList<>(new StripPages(this, faces).sheets());
            sheets.addAll(new TapePages(this, faces).sheets());
            sheets.forEach(sheet -> document.addPage(sheet.page(document)));
            faces.finish();
            PdfFile.save(document, out);
        }
    }

    String title() {
        return Words.say("strip.title", blank.sku(), source.id());
    }

    /** Which edge is which. */
    String rimWords() {
        return Words.say(blank.form().isFlat() ? "strip.top" : "strip.rim");
    }

    /** What blank, how large, and what lies beyond the ends. */
    List<String> facts() {
        List<String> facts = new ArrayList<>();
        facts.add(Words.say("strip.blank", blank.sku(), blank.name(), source.name()));
        if (blank.form().isFlat()) {
            facts.add(Words.say("strip.size-flat", size(band.around()), size(band.up())));
            facts.add(Words.say("strip.flat"));
            return facts;
        }
        String key = band.sector().isPresent() ? "strip.size-cone" : "strip.size";
        facts.add(Words.say(key, size(band.around()), size(band.up())));
        Length gap = BandLaw.handleGap(blank, source);
        facts.add(
                gap.isPositive()
                        ? Words.say("strip.gap", size(gap), size(gap.half()))
                        : Words.say("strip.seam", size(band.overlap())));
        return facts;
    }

    /** How the band's size comes about. */
    List<String> sum() {
        BandSum sum = BandSum.of(blank, source, band, unit);
        return List.of(Words.say("strip.around", sum.around()), Words.say("strip.up", sum.up()));
    }

    /** What to do with the pages, in order, and which cell to mend if something doesn't fit. */
    List<String> steps() {
        List<String> steps = new ArrayList<>();
        if (!tiles.isOne()) {
            steps.add(Words.say("strip.glue", tiles.count()));
        }
        if (blank.form().isFlat()) {
            steps.add(Words.say("strip.lay"));
            return steps;
        }
        steps.add(Words.say("strip.wrap", size(blank.topMargin())));
        steps.add(Words.say(blank.hasHandle() ? "strip.ends" : "strip.ends-seam", blank.sku()));
        String compare = blank.form() instanceof Form.Cone ? "strip.compare-cone" : "strip.compare";
        steps.add(Words.say(
                compare,
                size(TapePages.round(blank.form())),
                blank.sku(),
                TapeText.of(TapePages.PAPER, LengthUnit.MM)));
        steps.add(Words.say("strip.mend", blank.sku()));
        return steps;
    }

    /** What a tape round the blank has to read; empty for a flat one. */
    Optional<Length> circumference() {
        return blank.form().isFlat() ? Optional.empty() : Optional.of(TapePages.round(blank.form()));
    }

    private String size(Length length) {
        String mm = TapeText.of(length, LengthUnit.MM) + " mm";
        return unit == LengthUnit.IN ? mm + " (" + TapeText.of(length, LengthUnit.IN) + " in)" : mm;
    }

    Blank blank() {
        return blank;
    }

    Band band() {
        return band;
    }

    PaperRoom room() {
        return room;
    }

    LengthUnit unit() {
        return unit;
    }

    StripShape shape() {
        return shape;
    }

    Tiles tiles() {
        return tiles;
    }
}
