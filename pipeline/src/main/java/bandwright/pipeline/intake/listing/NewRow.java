package bandwright.pipeline.intake.listing;

import bandwright.rules.words.Words;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The row that products.csv lacks, as it is typed in: {@code ,Tern mug,Size=15 oz,SKU,DESIGN,1,,}. The two words in
 * capitals are to be replaced; left as they are, the table is refused, as an empty blank would mean "not drinkware".
 */
final class NewRow {
    private NewRow() {}

    static String of(String site, String product, String variation, String design) {
        String needed = design.isBlank() ? Words.say("intake.new-row.design") : "";
        return List.of(site, product, variation, Words.say("intake.new-row.sku"), needed, "1", "", "").stream()
                .map(NewRow::cell)
                .collect(Collectors.joining(","));
    }

    /** RFC 4180, section 2. A row stands on one line here. */
    private static String cell(String text) {
        String line = text.replaceAll("[\\p{Cntrl}\\v]+", " ").strip();
        boolean isPlain = line.indexOf(',') < 0 && line.indexOf('"') < 0;
        return isPlain ? line : '"' + line.replace("\"", "\"\"") + '"';
    }
}
