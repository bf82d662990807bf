package bandwright.rules.blanks;

import bandwright.rules.table.Plausible;
import bandwright.rules.table.Row;
import bandwright.rules.units.Length;
import java.util.Optional;

/** Reads the shape of a blank and what was measured of it: a circumference or a diameter, whichever it was. */
final class FormRow {
    /** Two measures of one rim may differ by this share of it before one of them must be wrong. */
    private static final double MEASURED_ALIKE = 0.01;

    private FormRow() {}

    /** What the cells say; a body of no size where a cell is wrong. */
    static Form read(Row row) {
        Optional<Shape> shape = row.cell("shape").needed().word(Shape.values());
        if (shape.isEmpty()) {
            return new Form.Flat(Length.ZERO, Length.ZERO, Outline.RECTANGLE);
        }
        Length height = needed(row, "height", Plausible.SIZE);
        return switch (shape.get()) {
            case CYLINDER -> new Form.Cylinder(round(row), height);
            case CONE -> new Form.Cone(round(row), needed(row, "bottom_diameter", Plausible.DIAMETER), height);
            case FLAT ->
                new Form.Flat(
                        needed(row, "width", Plausible.SIZE),
                        height,
                        row.cell("outline").word(Outline.values()).orElse(Outline.RECTANGLE));
        };
    }

    /** The circumference, as measured or pi x the diameter. */
    private static Length round(Row row) {
        Optional<Length> round = row.cell("circumference").length(Plausible.CIRCUMFERENCE);
        Optional<Length> across = row.cell("top_diameter").length(Plausible.DIAMETER);
        if (!row.areSound("circumference", "top_diameter")) {
            return Length.ZERO;
        }
        if (round.isEmpty() && across.isEmpty()) {
            row.fault("circumference", "round.missing");
            return Length.ZERO;
        }
        Length computed = across.map(diameter -> diameter.times(Math.PI)).orElse(Length.ZERO);
        if (round.isPresent() && across.isPresent() && differ(round.get(), computed)) {
            row.fault(
                    "top_diameter",
                    "round.two",
                    row.text("circumference"),
                    row.text("top_diameter"),
                    computed.mm2(),
                    round.get().mm2());
        }
        return round.orElse(computed);
    }

    private static boolean differ(Length one, Length other) {
        return Math.abs(one.mm() - other.mm()) > MEASURED_ALIKE * Math.max(one.mm(), other.mm());
    }

    static void checkHandle(Row row, Form form, Length handle) {
        if (form.isFlat() || !row.areSound("circumference", "top_diameter", "handle_width")) {
            return;
        }
        Length round = form instanceof Form.Cylinder cylinder
                ? cylinder.circumference()
                : ((Form.Cone) form).rimCircumference();
        if (!round.longerThan(handle)) {
            row.fault("handle_width", "handle.wide", row.text("handle_width"), round.mm2());
        }
    }

    private static Length needed(Row row, String column, Plausible plausible) {
        return row.cell(column).needed().length(plausible).orElse(Length.ZERO);
    }
}
