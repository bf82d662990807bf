package bandwright.pipeline.write.setup;

import bandwright.pipeline.RunId;
import bandwright.pipeline.type.Outline;
import bandwright.pipeline.write.list.Faces;
import bandwright.pipeline.write.list.Style;
import bandwright.pipeline.write.pdf.Bent;
import bandwright.pipeline.write.pdf.PdfFile;
import bandwright.rules.blanks.Band;
import bandwright.rules.blanks.BandLaw;
import bandwright.rules.blanks.BandSum;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Form;
import bandwright.rules.blanks.Sector;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import bandwright.rules.units.TapeText;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * A strip of plain paper to be wrapped round a blank before one is spent: the band's outline at true size, not mirrored,
 * with its rim edge, its ends and the gap beyond them; and for a round blank a narrow tape that reads its circumference
 * through the handle. Cut along the outline; no ink of it is meant for a press.
 */
public final class FitStrip {
    /** Of plain paper, which the tape's scale takes off: wrapped outside it reads pi times more. [J] */
    static final Length PAPER = Length.mm(0.1);

    private static final double TAPE_HEIGHT = 12;
    private static final double AIR = 8;

    private final Blank blank;
    private final HeatSource source;
    private final Band band;
    private final PaperRoom room;
    private final LengthUnit unit;

    private FitStrip(Blank blank, HeatSource source, Band band, PaperRoom room, LengthUnit unit) {
        this.blank = blank;
        this.source = source;
        this.band = band;
        this.room = room;
        this.unit = unit;
    }

    /** Whether a sheet of that room takes the band's outline, along it or turned. */
    public static boolean fits(Band band, PaperRoom room) {
        Box shape = shape(band);
        double across = room.inside().width().mm();
        double along = room.inside().height().mm();
        return fits(shape, across, along) || fits(shape, along, across);
    }

    private static boolean fits(Box shape, double width, double height) {
        return shape.width().mm() <= width && shape.height().mm() <= height;
    }

    private static Box shape(Band band) {
        return band.sector().map(Sector::box).orElse(Box.of(band.printWidth(), band.printHeight()));
    }

    /** Writes the strip: the outline on its first page, the tape and what to do with both on the second. */
    public static void write(
            Blank blank, HeatSource source, Band band, PaperRoom room, LengthUnit unit, RunId day, OutputStream out)
            throws IOException {
        String name = "strip-" + blank.sku();
        try (PDDocument document = PdfFile.create(day, name, Words.say("strip.title", blank.sku(), source.id()))) {
            Faces faces = new Faces(document);
            FitStrip strip = new FitStrip(blank, source, band, room, unit);
            document.addPage(strip.outline(faces).page(document));
            document.addPage(strip.tape(faces).page(document));
            faces.finish();
            PdfFile.save(document, out);
        }
    }

    private SetupSheet outline(Faces faces) {
        Box shape = shape(band);
        boolean isTurned =
                !fits(shape, room.inside().width().mm(), room.inside().height().mm());
        SetupSheet sheet = new SetupSheet(faces, room, isTurned);
        double x = (sheet.width().mm() - shape.width().mm()) / 2;
        double y = (sheet.height().mm() - shape.height().mm()) / 2;
        sheet.canvas().save();
        sheet.canvas().concat(1, 0, 0, 1, Length.mm(x), Length.mm(y));
        Box flat = Box.of(band.printWidth(), band.printHeight());
        Optional<Sector> sector = band.sector();
        sheet.stroke(bent(Outline.of(flat), sector));
        scale(sheet, sector);
        middle(sheet, sector, flat);
        words(sheet, shape);
        sheet.canvas().restore();
        return sheet;
    }

    private static Outline bent(Outline flat, Optional<Sector> sector) {
        return sector.map(own -> Bent.outline(flat, own)).orElse(flat);
    }

    /** Millimetres along the rim edge, from the left end; on a cone as long as they are half-way up. */
    private void scale(SetupSheet sheet, Optional<Sector> sector) {
        double top = band.printHeight().mm();
        int last = (int) Math.floor(band.printWidth().mm());
        for (int mm = 0; mm <= last; mm++) {
            double length = mm % 10 == 0 ? 5 : mm % 5 == 0 ? 3.5 : 2;
            Box tick = new Box(
                    Length.mm(Math.max(0, mm - 0.06)), Length.mm(top - length), Length.mm(0.12), Length.mm(length));
            sheet.canvas().fill(bent(Outline.of(tick), sector));
            if (mm % 10 == 0 && mm > 0 && mm < last - 3) {
                double u = mm;
                double x = sector.map(own -> own.x(u, top - 8)).orElse(u);
                double y = sector.map(own -> own.y(u, top - 8)).orElse(top - 8);
                sheet.setCentred(String.valueOf(mm), Style.SMALL, x, y);
            }
        }
    }

    /** Where the picture's middle comes to lie: opposite the handle, or opposite the seam. */
    private void middle(SetupSheet sheet, Optional<Sector> sector, Box flat) {
        double half = band.around().mm() / 2;
        double high = flat.height().mm();
        for (double v = 6; v + 4 < high - 14; v += 8) {
            Box dash = new Box(Length.mm(half - 0.1), Length.mm(v), Length.mm(0.2), Length.mm(4));
            sheet.canvas().fill(bent(Outline.of(dash), sector));
        }
        if (band.overlap().isPositive()) {
            Box seam = new Box(band.around().minus(Length.mm(0.1)), Length.ZERO, Length.mm(0.2), flat.height());
            sheet.canvas().fill(bent(Outline.of(seam), sector));
        }
    }

    private void words(SetupSheet sheet, Box shape) {
        boolean isCone = band.sector().isPresent();
        // Left of the middle line, and clear of a cone's leaning end.
        double left = isCone ? shape.width().mm() * 0.18 : 6;
        double wide = shape.width().mm() * 0.48 - left;
        double y = shape.height().mm() * (isCone ? 0.78 : 1) - 14;
        y = sheet.setBelow(Words.say("strip.rim"), Style.STRONG, left, y, wide);
        y = sheet.setBelow(
                Words.say("strip.blank", blank.sku(), blank.name(), source.name()), Style.BODY, left, y - 1, wide);
        y = sheet.setBelow(
                Words.say("strip.size", size(band.around()), size(band.up())), Style.BODY, left, y - 1, wide);
        Length gap = BandLaw.handleGap(blank, source);
        String ends = gap.isPositive()
                ? Words.say("strip.gap", size(gap), size(gap.half()))
                : blank.form().isFlat() ? Words.say("strip.flat") : Words.say("strip.seam", size(band.overlap()));
        sheet.setBelow(ends, Style.BODY, left, y - 1, wide);
    }

    private SetupSheet tape(Faces faces) {
        SetupSheet sheet = new SetupSheet(faces, room, true);
        double wide = sheet.width().mm();
        double y = sheet.height().mm();
        y = sheet.setBelow(Words.say("strip.title", blank.sku(), source.id()), Style.HEADING, 0, y, wide);
        y = sheet.setBelow(Words.say("strip.print"), Style.BODY, 0, y - 2, wide);
        BandSum sum = BandSum.of(blank, source, band, unit);
        y = sheet.setBelow(Words.say("strip.around", sum.around()), Style.STRONG, 0, y - 2, wide);
        y = sheet.setBelow(Words.say("strip.up", sum.up()), Style.STRONG, 0, y, wide);
        y = sheet.setBelow(Words.say("strip.wrap"), Style.BODY, 0, y - 2, wide);
        String column = blank.form() instanceof Form.Cone ? "strip.compare-cone" : "strip.compare";
        if (blank.form().isFlat()) {
            return sheet;
        }
        Length round = blank.form() instanceof Form.Cylinder cylinder
                ? cylinder.circumference()
                : ((Form.Cone) blank.form()).rimCircumference();
        y = sheet.setBelow(Words.say(column, size(round), blank.sku()), Style.BODY, 0, y - 2, wide);
        tapes(sheet, y - AIR, wide, round.mm() + 30);
        return sheet;
    }

    /** The tape in as many rows as it needs; each begins with the last centimetre of the one before, to be glued on it. */
    private static void tapes(SetupSheet sheet, double top, double wide, double length) {
        double from = 0;
        double y = top - TAPE_HEIGHT;
        boolean isFirst = true;
        while (from < length && y > 0) {
            double room = wide - 2;
            double to = Math.min(length, from + room);
            tape(sheet, y, from, to, isFirst);
            isFirst = false;
            from = to < length ? Math.floor(to / 10) * 10 - 10 : length;
            y -= TAPE_HEIGHT + AIR;
        }
    }

    /** The scale gives what lies under the paper: pi times its thickness less than is wrapped outside. */
    private static void tape(SetupSheet sheet, double y, double from, double to, boolean isFirst) {
        double taken = Math.PI * PAPER.mm();
        sheet.across(0, to - from, y);
        sheet.across(0, to - from, y + TAPE_HEIGHT);
        sheet.up(0, y, y + TAPE_HEIGHT);
        sheet.up(to - from, y, y + TAPE_HEIGHT);
        if (isFirst) {
            sheet.set(Words.say("strip.start"), Style.SMALL, 2, y + 2);
        } else {
            sheet.set(Words.say("strip.join", (int) Math.round(from)), Style.SMALL, 2, y + 2);
        }
        for (int mm = (int) Math.ceil(from); mm + taken <= to; mm++) {
            double at = isFirst && mm == 0 ? 0 : mm + taken - from;
            if (at < 0) {
                continue;
            }
            double tick = mm % 10 == 0 ? 5 : mm % 5 == 0 ? 3.5 : 2;
            sheet.up(at, y + TAPE_HEIGHT - tick, y + TAPE_HEIGHT);
            if (mm % 10 == 0 && mm > from + 2) {
                sheet.setCentred(String.valueOf(mm), Style.SMALL, at, y + TAPE_HEIGHT - 8);
            }
        }
    }

    private String size(Length length) {
        String mm = TapeText.of(length, LengthUnit.MM) + " mm";
        return unit == LengthUnit.IN ? mm + " (" + TapeText.of(length, LengthUnit.IN) + " in)" : mm;
    }
}
