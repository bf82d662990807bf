package bandwright.pipeline.write.setup;

import bandwright.pipeline.type.Outline;
import bandwright.pipeline.write.list.Faces;
import bandwright.pipeline.write.list.Style;
import bandwright.rules.blanks.Form;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import bandwright.rules.words.Words;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.util.ArrayList;
import java.util.List;

/**
 * The sheets with the strip itself: the band's outline, dashed white up to the handle, a scale along both edges, and where
 * it takes several sheets crosses that two neighbours both show.
 */
final class StripPages {
    private static final double TICK = 0.12;

    /** Between the scale of an edge and the words. */
    private static final double CLEAR = 14;

    private final FitStrip strip;
    private final StripShape shape;
    private final Tiles tiles;
    private final PaperRoom room;
    private final Faces faces;

    StripPages(FitStrip strip, Faces faces) {
        this.strip = strip;
        this.shape = strip.shape();
        this.tiles = strip.tiles();
        this.room = strip.room();
        this.faces = faces;
    }

    List<SetupSheet> sheets() {
        List<SetupSheet> sheets = new ArrayList<>();
        for (int row = 0; row < tiles.rows(); row++) {
            for (int column = 0; column < tiles.columns(); column++) {
                sheets.add(sheet(column, row));
            }
        }
        return sheets;
    }

    private SetupSheet sheet(int column, int row) {
        SetupSheet sheet = SetupSheet.trueSize(faces, room, tiles.isTurned());
        double x = tiles.columns() > 1
                ? -tiles.left(column)
                : (tiles.width() - shape.box().width().mm()) / 2;
        double y = tiles.rows() > 1
                ? -tiles.lower(row)
                : (tiles.height() - shape.box().height().mm()) / 2;
        sheet.canvas().save();
        if (!tiles.isOne()) {
            sheet.canvas().clip(Box.of(Length.mm(tiles.width()), Length.mm(tiles.height())));
        }
        sheet.canvas().concat(1, 0, 0, 1, Length.mm(x), Length.mm(y));
        draw(sheet);
        crosses(sheet);
        sheet.canvas().restore();
        if (!tiles.isOne()) {
            int number = row * tiles.columns() + column + 1;
            sheet.set(Words.say("strip.sheet", number, tiles.count()), Style.SMALL, 2, 1);
        }
        return sheet;
    }

    private void draw(SetupSheet sheet) {
        sheet.stroke(shape.box(0, 0, shape.width(), shape.height()));
        white(sheet);
        rimScale(sheet);
        if (strip.unit() == LengthUnit.IN) {
            footScale(sheet);
        }
        middle(sheet);
        blankItself(sheet);
        words(sheet);
    }

    /** Dashed, from both ends of the band to the handle. */
    private void white(SetupSheet sheet) {
        if (!shape.hasWhite()) {
            return;
        }
        double high = shape.height();
        double far = shape.width() + shape.reach();
        for (double v = 0.5; v < high; v += 4) {
            double length = Math.min(2, high - v);
            sheet.canvas().fill(shape.box(-shape.reach(), v, 0.2, length));
            sheet.canvas().fill(shape.box(far - 0.2, v, 0.2, length));
        }
        for (double u = 1; u < shape.reach(); u += 4) {
            double length = Math.min(2, shape.reach() - u);
            for (double v : new double[] {0, high - 0.2}) {
                sheet.canvas().fill(shape.box(-u - length, v, length, 0.2));
                sheet.canvas().fill(shape.box(shape.width() + u, v, length, 0.2));
            }
        }
    }

    /** Millimetres along the rim edge, from the band's left end; true at that edge. */
    private void rimScale(SetupSheet sheet) {
        double top = shape.height();
        double along = shape.alongAt(top);
        int last = (int) Math.floor(shape.width() / along);
        for (int mm = 0; mm <= last; mm++) {
            double length = mm % 10 == 0 ? 5 : mm % 5 == 0 ? 3.5 : 2;
            sheet.canvas().fill(shape.box(Math.max(0, mm * along - TICK / 2), top - length, TICK, length));
            if (mm % 10 == 0 && mm > 0 && mm < last - 3) {
                number(sheet, mm, mm * along, top - 8);
            }
        }
    }

    /** Inches along the foot edge, in eighths; true at that edge. */
    private void footScale(SetupSheet sheet) {
        double along = shape.alongAt(0) * Length.inches(1).mm() / 8;
        int last = (int) Math.floor(shape.width() / along);
        for (int eighth = 0; eighth <= last; eighth++) {
            double length = eighth % 8 == 0 ? 5 : eighth % 4 == 0 ? 3.5 : 2;
            double u = Math.max(0, eighth * along - TICK / 2);
            sheet.canvas().fill(shape.box(u, 0, TICK, length));
            if (eighth % 8 == 0 && eighth > 0 && eighth < last) {
                String text = eighth == 8 ? Words.say("strip.one-inch") : String.valueOf(eighth / 8);
                sheet.setCentred(text, Style.SMALL, shape.x(u, 6), shape.y(u, 6));
            }
        }
    }

    private void number(SetupSheet sheet, int mm, double u, double v) {
        String text = mm == 10 ? Words.say("strip.ten-mm") : String.valueOf(mm);
        sheet.setCentred(text, Style.SMALL, shape.x(u, v), shape.y(u, v));
    }

    /** Where the picture's middle comes to lie: opposite the handle, or opposite the seam. */
    private void middle(SetupSheet sheet) {
        double half = strip.band().around().mm() / 2;
        for (double v = 10; v + 4 < shape.height() - CLEAR; v += 8) {
            sheet.canvas().fill(shape.box(half - 0.1, v, 0.2, 4));
        }
        if (strip.band().overlap().isPositive()) {
            sheet.canvas().fill(shape.box(strip.band().around().mm() - 0.1, 0, 0.2, shape.height()));
        }
    }

    /** A flat blank's own edge, where the print runs past it. */
    private void blankItself(SetupSheet sheet) {
        boolean runsPast = strip.blank().sideMargin().isNegative()
                && strip.band().limitedBy().isEmpty();
        if (!runsPast || !(strip.blank().form() instanceof Form.Flat flat)) {
            return;
        }
        Box box = new Box(
                strip.blank().sideMargin().times(-1),
                strip.blank().bottomMargin().times(-1).plus(strip.band().bleedBottom()),
                flat.width(),
                flat.height());
        sheet.canvas().line(0.5);
        if (flat.outline() == bandwright.rules.blanks.Outline.ROUND) {
            Ellipse2D round = new Ellipse2D.Double(
                    box.x().mm(), box.y().mm(), box.width().mm(), box.height().mm());
            sheet.stroke(Outline.of(round, new AffineTransform()));
        } else {
            sheet.stroke(Outline.of(box));
        }
    }

    /** Crosses in the middle of every lap. */
    private void crosses(SetupSheet sheet) {
        double width = shape.box().width().mm();
        double height = shape.box().height().mm();
        for (int column = 1; column < tiles.columns(); column++) {
            cross(sheet, tiles.left(column) + Tiles.LAP / 2, height * 0.3);
            cross(sheet, tiles.left(column) + Tiles.LAP / 2, height * 0.7);
        }
        for (int row = 1; row < tiles.rows(); row++) {
            cross(sheet, width * 0.3, tiles.lower(row) + Tiles.LAP / 2);
            cross(sheet, width * 0.7, tiles.lower(row) + Tiles.LAP / 2);
        }
    }

    private static void cross(SetupSheet sheet, double x, double y) {
        sheet.across(x - 4, x + 4, y);
        sheet.up(x, y - 4, y + 4);
    }

    /** Left of the middle line, clear of a cone's leaning end; what has no room here stands on the last page too. */
    private void words(SetupSheet sheet) {
        double high = shape.height();
        // Inside the line of a round blank.
        boolean isFlat = strip.blank().form().isFlat();
        double first = isFlat ? high * 0.74 : high - CLEAR;
        double in = isFlat ? shape.width() * 0.17 : 6;
        double left = Math.max(shape.x(in, first), shape.x(in, CLEAR));
        double wide = shape.x(strip.band().around().mm() * 0.48, first) - left;
        if (wide < 20) {
            return;
        }
        double y = shape.y(strip.band().around().mm() * 0.1, first);
        double lowest = shape.y(strip.band().around().mm() * 0.4, CLEAR - 4);
        y = sheet.setBelow(strip.rimWords(), Style.STRONG, left, y, wide);
        for (String line : strip.facts()) {
            double end = sheet.below(line, Style.BODY, y - 1, wide);
            if (end < lowest) {
                return;
            }
            y = sheet.setBelow(line, Style.BODY, left, y - 1, wide);
        }
    }
}
