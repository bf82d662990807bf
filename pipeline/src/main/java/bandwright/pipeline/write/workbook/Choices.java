package bandwright.pipeline.write.workbook;

import bandwright.pipeline.held.HeldFile;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blank;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.orders.OrderField;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.dhatim.fastexcel.DataValidationErrorStyle;
import org.dhatim.fastexcel.VisibilityState;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * What a cell with a closed list offers: the skus, designs and heat sources that there are. An offer only: another word
 * may be typed, an alias, say. A long list stands in a hidden sheet, as a cell's own holds 255 characters.
 */
final class Choices {
    /** ECMA-376 Part 1, 18.3.1.32: no more characters in a list that is written out. */
    private static final int INLINE = 255;

    private final Map<OrderField, List<String>> lists = new LinkedHashMap<>();
    /** The fields whose lists stand in the sheet, in the order of its columns. */
    private final List<OrderField> inSheet = new ArrayList<>();

    Choices(Rulebook rules) {
        list(OrderField.SKU, rules.blanks().list().stream().map(Blank::sku).toList());
        list(OrderField.DESIGN, rules.designs().names());
        list(
                OrderField.HEAT_SOURCE,
                rules.heatSources().list().stream().map(HeatSource::id).toList());
    }

    private void list(OrderField field, List<String> words) {
        if (!words.isEmpty()) {
            lists.put(field, words);
        }
    }

    /** The fields that have a list. */
    Iterable<OrderField> fields() {
        return lists.keySet();
    }

    /** Lets the cells of a column offer a field's list; rows are counted from 0. */
    void offer(Worksheet sheet, OrderField field, int column, int firstRow, int lastRow) {
        sheet.range(firstRow, column, lastRow, column)
                .validateWithListByFormula(formula(field))
                .showErrorMessage(false)
                // Not shown; of the three the library writes only this one alike in every language.
                .errorStyle(DataValidationErrorStyle.STOP)
                .errorTitle("")
                .error("");
    }

    private String formula(OrderField field) {
        List<String> words = lists.getOrDefault(field, List.of());
        String inline = String.join(",", words);
        boolean isPlain = words.stream().noneMatch(word -> word.matches("(?s).*[,\"&<>\\p{Cntrl}].*|=.*|\\s.*|.*\\s"));
        if (isPlain && inline.length() <= INLINE) {
            return '"' + inline + '"';
        }
        if (!inSheet.contains(field)) {
            inSheet.add(field);
        }
        char column = (char) ('A' + inSheet.indexOf(field));
        return HeldFile.CHOICES + "!$" + column + "$1:$" + column + "$" + words.size();
    }

    /** Adds the hidden sheet, if a list needs it; after the last offer. */
    void finish(Workbook book) {
        if (inSheet.isEmpty()) {
            return;
        }
        Worksheet sheet = book.newWorksheet(HeldFile.CHOICES);
        sheet.setVisibilityState(VisibilityState.HIDDEN);
        for (int column = 0; column < inSheet.size(); column++) {
            List<String> words = lists.getOrDefault(inSheet.get(column), List.of());
            for (int row = 0; row < words.size(); row++) {
                sheet.value(row, column, CellText.of(words.get(row)));
            }
        }
    }
}
