package bandwright.rules.paper;

import bandwright.rules.table.Row;
import bandwright.rules.units.Length;
import java.math.BigDecimal;

/**
 * How pages are cut from a roll: as wide as the roll, as long as what lies on them with the margins, never longer than
 * the roll's longest page. What needs 400 mm between margins of 6 mm is cut after 412 mm; a printer that prints 99 mm for
 * 100 reaches that far on a page of 412 / 0.99 = 416.17 mm.
 */
public final class Roll {
    /** Two arms still lay it on a table, and it is within what drivers take as a page of one's own size. [J] */
    static final Length LONGEST = Length.mm(2000);

    /** 14,400 units of 1/72 in: ISO 32000-1, Annex C, table C.1. */
    private static final Length LONGEST_PDF = Length.mm(5080);

    /** Pages end on a whole hundredth of a millimetre, as run.json and the print settings say their length. */
    private static final long FINE = 10_000;

    private Roll() {}

    /** The longest page. */
    public static Length longest(Paper roll) {
        return roll.maxLength().orElse(LONGEST);
    }

    /** How far up a page of that length ink may reach: the margin counts from where the paper or printing ends. */
    static Length top(Paper roll, Printer printer, Length page) {
        return page.times(reach(printer)).minus(roll.marginTop());
    }

    /** The shortest page on which ink may reach as far up as that. */
    public static Length page(Paper roll, Printer printer, Length top) {
        double nanometres = top.plus(roll.marginTop()).nanometres() / reach(printer);
        return whole(new Length((long) Math.ceil(nanometres)));
    }

    /** The next length that a page may have. */
    public static Length whole(Length length) {
        return new Length(Math.floorDiv(length.nanometres() + FINE - 1, FINE) * FINE);
    }

    private static double reach(Printer printer) {
        return Math.min(1, printer.scaleY());
    }

    /** What a page of that length costs where a metre costs that. */
    static BigDecimal cost(BigDecimal metre, Length page) {
        return metre.multiply(BigDecimal.valueOf(page.nanometres(), 9));
    }

    static void check(Row row, Paper paper) {
        if (paper.maxLength().isEmpty() || !row.areSound("height", "max_length", "margin_top", "margin_bottom")) {
            return;
        }
        Length longest = paper.maxLength().get();
        if (!paper.isRoll()) {
            row.fault("max_length", "roll.sheet");
        } else if (longest.longerThan(LONGEST_PDF)) {
            row.fault("max_length", "roll.long", LONGEST_PDF.mm2(), LONGEST.mm2());
        } else if (!longest.longerThan(paper.marginTop().plus(paper.marginBottom()))) {
            row.fault("max_length", "paper.narrow");
        }
    }
}
