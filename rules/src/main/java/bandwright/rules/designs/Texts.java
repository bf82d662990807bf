package bandwright.rules.designs;

import bandwright.rules.table.Faults;
import bandwright.rules.table.Names;
import bandwright.rules.table.Row;
import bandwright.rules.table.Table;
import bandwright.rules.units.Length;
import bandwright.rules.units.Rgb;
import bandwright.rules.units.ShopUnits;
import java.util.IllformedLocaleException;
import java.util.List;
import java.util.Locale;

/** texts.csv: the text fields that designs take. */
public record Texts(List<TextField> list) {
    public Texts {
        list = List.copyOf(list);
    }

    /** The fields of that design, in the order of the table. */
    public List<TextField> of(String design) {
        return list.stream().filter(text -> Names.same(text.design(), design)).toList();
    }

    /** A text without a largest size is as large as its box. */
    private static final Length ANY_SIZE = Length.mm(1000);

    private static final Rgb BLACK = new Rgb(0, 0, 0);

    /** Reads texts.csv. */
    public static Texts read(Table table, ShopUnits units, Faults faults) {
        return new Texts(table.read(units, faults, Texts::field));
    }

    private static TextField field(Row row) {
        double x = row.cell("x").percent(-100, 200).orElse(0.0);
        double y = row.cell("y").percent(-100, 200).orElse(0.0);
        Length most = row.cell("max_size").typeSize().orElse(ANY_SIZE);
        Length least = row.cell("min_size").typeSize().orElse(Length.ZERO);
        if (least.longerThan(most)) {
            row.fault("min_size", "sizes.crossed", row.text("min_size"), row.text("max_size"));
        }
        return new TextField(
                row.cell("design").needed().text(),
                row.cell("field").needed().text(),
                row.cell("side").word(Side.values()),
                row.cell("anchor").word(Anchor.values()).orElse(Anchor.PICTURE),
                x,
                y,
                row.cell("width").percent(0.1, 300).orElse(100 - x),
                row.cell("height").percent(0.1, 300).orElse(100 - y),
                row.cell("lines").integer(1, 100).orElse(1),
                row.text("font").isEmpty() ? FontFile.BUNDLED.get(0) : row.text("font"),
                most,
                least,
                row.cell("colour").colour().orElse(BLACK),
                row.cell("align").word(Align.values()).orElse(Align.CENTRE),
                row.cell("letter_case").word(LetterCase.values()),
                language(row),
                row.cell("max_chars").limit(1, 100_000),
                row.cell("required").yes(),
                row.text("default"),
                row.text("note"));
    }

    /** As BCP 47 writes languages: tr, nl, el. */
    private static Locale language(Row row) {
        String tag = row.text("language");
        if (tag.isEmpty()) {
            return Locale.ROOT;
        }
        try {
            return new Locale.Builder().setLanguageTag(tag).build();
        } catch (IllformedLocaleException e) {
            row.fault("language", "language", tag);
            return Locale.ROOT;
        }
    }
}
