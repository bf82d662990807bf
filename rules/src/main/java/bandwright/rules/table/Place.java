package bandwright.rules.table;

/**
 * Where in the rulebook something stands.
 *
 * @param file the table's file name: blanks.csv
 * @param row the record's number as a spreadsheet program shows it, the header being 1; 0 = the whole table
 * @param column empty = the whole row
 */
public record Place(String file, int row, String column) {}
