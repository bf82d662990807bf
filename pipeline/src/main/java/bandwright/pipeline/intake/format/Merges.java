package bandwright.pipeline.intake.format;

import bandwright.pipeline.limits.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Gathers the merged cells of one sheet that are higher than a row; each row of them counts, as each takes time. */
final class Merges {
    private static final Pattern RANGE = Pattern.compile("\\$?([A-Z]{1,3})\\$?(\\d{1,7}):\\$?[A-Z]{1,3}\\$?(\\d{1,7})");

    private final Allowance allowance;
    private final List<Merge> merges = new ArrayList<>();

    Merges(Allowance allowance) {
        this.allowance = allowance;
    }

    /** A range like B2:C4; what is none is left alone. */
    void add(String range) throws Unreadable {
        Matcher parts = RANGE.matcher(range);
        if (parts.matches()) {
            add(Integer.parseInt(parts.group(2)), Integer.parseInt(parts.group(3)), column(parts.group(1)));
        }
    }

    void add(int firstRow, int lastRow, int column) throws Unreadable {
        if (lastRow > firstRow && column < Limits.SHEET_COLUMNS) {
            int last = Math.min(lastRow, Limits.SHEET_ROWS);
            allowance.keepMerge(last - firstRow);
            merges.add(new Merge(firstRow, last, column));
        }
    }

    List<Merge> list() {
        return merges;
    }

    /** The column that a reference like AB12 begins with, A being 0; -1 where it begins with none. */
    static int column(String reference) {
        int column = 0;
        for (int i = 0; i < reference.length() && column <= Limits.SHEET_COLUMNS; i++) {
            char c = reference.charAt(i);
            if (c < 'A' || c > 'Z') {
                break;
            }
            column = column * 26 + (c - 'A' + 1);
        }
        return column - 1;
    }
}
