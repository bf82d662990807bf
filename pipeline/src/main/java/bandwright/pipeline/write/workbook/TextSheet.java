package bandwright.pipeline.write.workbook;

import java.util.ArrayList;
import java.util.List;
import org.dhatim.fastexcel.Worksheet;

/**
 * One sheet of text cells under a bold header that stays in view. Cells have the format "@", so that 0071 typed into one
 * stays 0071 and "=1+1" edited in one stays text.
 */
final class TextSheet {
    private static final String TEXT = "@";
    /** A soft orange [our judgement]: seen at a glance, black on it still reads well. */
    private static final String MARK = "FFFFD48A";

    private static final int NARROWEST = 8;
    private static final int WIDEST = 60;

    private final Worksheet sheet;
    private final List<Integer> widths = new ArrayList<>();
    private int row;

    TextSheet(Worksheet sheet, List<String> header) {
        this.sheet = sheet;
        next(header);
        sheet.freezePane(0, 1);
        for (int column = 0; column < header.size(); column++) {
            sheet.style(0, column).format(TEXT).bold().set();
        }
    }

    /** Adds a row of texts and returns its number. */
    int next(List<String> texts) {
        for (int column = 0; column < texts.size(); column++) {
            text(column, texts.get(column));
        }
        return row++;
    }

    private void text(int column, String text) {
        widen(column, text.length());
        if (!text.isEmpty()) {
            sheet.value(row, column, CellText.of(text));
        }
        sheet.style(row, column).format(TEXT).set();
    }

    /** Puts a number over the empty text of a cell. */
    void number(int atRow, int column, Number number, String format) {
        sheet.value(atRow, column, number);
        sheet.style(atRow, column).format(format).set();
    }

    /** Marks a cell that somebody has to mend. */
    void mark(int atRow, int column) {
        sheet.style(atRow, column).format(TEXT).fillColor(MARK).set();
    }

    private void widen(int column, int characters) {
        while (widths.size() <= column) {
            widths.add(NARROWEST);
        }
        widths.set(column, Math.min(WIDEST, Math.max(widths.get(column), characters + 2)));
    }

    void finish() {
        for (int column = 0; column < widths.size(); column++) {
            sheet.width(column, widths.get(column));
        }
    }
}
