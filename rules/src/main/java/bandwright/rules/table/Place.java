package bandwright.rules.table;

import bandwright.rules.words.Words;

/**
 * Where in the rulebook something stands.
 *
 * @param file the table's file name: blanks.csv
 * @param row the record's number as a spreadsheet program shows it, the header being 1; 0 = the whole table
 * @param column empty = the whole row
 */
public record Place(String file, int row, String column) {
    /** In words: blanks.csv, row 7, column shape. */
    public String say() {
        if (row == 0) {
            return file;
        }
        return column.isEmpty()
                ? Words.say("rules.place.row", file, row)
                : Words.say("rules.place.cell", file, row, column);
    }
}
