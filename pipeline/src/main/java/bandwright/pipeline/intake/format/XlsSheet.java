package bandwright.pipeline.intake.format;

import bandwright.pipeline.rows.Cell;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntFunction;
import org.apache.poi.hssf.record.BoolErrRecord;
import org.apache.poi.hssf.record.CellRecord;
import org.apache.poi.hssf.record.FormulaRecord;
import org.apache.poi.hssf.record.LabelRecord;
import org.apache.poi.hssf.record.LabelSSTRecord;
import org.apache.poi.hssf.record.MergeCellsRecord;
import org.apache.poi.hssf.record.NumberRecord;
import org.apache.poi.hssf.record.Record;
import org.apache.poi.hssf.record.RowRecord;
import org.apache.poi.hssf.record.SSTRecord;
import org.apache.poi.hssf.record.StringRecord;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.util.CellRangeAddress;

/**
 * Gathers the cells of one sheet of an .xls workbook from its records. A formula that gives a text has it in the record
 * behind its own.
 */
final class XlsSheet {
    /** MS-XLS 2.5.51: a cell's column is below 256, its row below 65,536. */
    private static final int COLUMNS = 256;

    /** What all sheets of a workbook share. */
    static final class Book {
        private final IntFunction<NumberFormat> formatOfStyle;
        private final Optional<SSTRecord> texts;
        private final Allowance allowance;
        private final Cells cells;
        private final NumberCells numbers;

        Book(
                IntFunction<NumberFormat> formatOfStyle,
                Optional<SSTRecord> texts,
                boolean from1904,
                Allowance allowance) {
            this.formatOfStyle = formatOfStyle;
            this.texts = texts;
            this.allowance = allowance;
            this.cells = new Cells(allowance);
            this.numbers = new NumberCells(new Serials(from1904), cells);
        }

        private Cell text(int index, int row) throws Unreadable {
            if (texts.isEmpty() || index < 0 || index >= texts.get().getNumUniqueStrings()) {
                throw Unreadable.of("file-damaged");
            }
            return cells.of(texts.get().getString(index).getString(), row);
        }

        private Cell number(double value, CellRecord where) throws Unreadable {
            return numbers.of(value, formatOfStyle.apply(where.getXFIndex()), where.getRow() + 1);
        }
    }

    private final Book book;
    private final Merges merges;
    private final Map<Integer, List<Cell>> rows = new TreeMap<>();
    private final BitSet hidden = new BitSet();
    private Optional<FormulaRecord> awaitsText = Optional.empty();

    XlsSheet(Book book) {
        this.book = book;
        this.merges = new Merges(book.allowance);
    }

    void take(Record each) throws Unreadable {
        if (each instanceof RowRecord row) {
            hidden.set(row.getRowNumber(), row.getZeroHeight());
        } else if (each instanceof LabelSSTRecord text) {
            put(text, book.text(text.getSSTIndex(), text.getRow() + 1));
        } else if (each instanceof NumberRecord number) {
            put(number, book.number(number.getValue(), number));
        } else if (each instanceof BoolErrRecord value) {
            put(value, value.isError() ? error(value.getErrorValue()) : truth(value.getBooleanValue()));
        } else if (each instanceof FormulaRecord formula) {
            formula(formula);
        } else if (each instanceof StringRecord text && awaitsText.isPresent()) {
            put(
                    awaitsText.get(),
                    book.cells.of(text.getString(), awaitsText.get().getRow() + 1));
            awaitsText = Optional.empty();
        } else if (each instanceof LabelRecord text) {
            put(text.getRow(), text.getColumn(), book.cells.of(text.getValue(), text.getRow() + 1));
        } else if (each instanceof MergeCellsRecord merged) {
            merged(merged);
        }
    }

    private void formula(FormulaRecord formula) throws Unreadable {
        if (formula.hasCachedResultString()) {
            awaitsText = Optional.of(formula);
            return;
        }
        CellType kind = formula.getCachedResultTypeEnum();
        if (kind == CellType.BOOLEAN) {
            put(formula, truth(formula.getCachedBooleanValue()));
        } else if (kind == CellType.ERROR) {
            put(formula, error(formula.getCachedErrorValue()));
        } else if (kind == CellType.NUMERIC) {
            put(formula, book.number(formula.getValue(), formula));
        }
    }

    private static Cell truth(boolean value) {
        return Cell.of(value ? "TRUE" : "FALSE");
    }

    private static Cell error(int code) {
        return Cell.of(
                FormulaError.isValidCode(code) ? FormulaError.forInt(code).getString() : "#VALUE!");
    }

    private void merged(MergeCellsRecord record) throws Unreadable {
        for (int i = 0; i < record.getNumAreas(); i++) {
            CellRangeAddress area = record.getAreaAt(i);
            merges.add(area.getFirstRow() + 1, area.getLastRow() + 1, area.getFirstColumn());
        }
    }

    private void put(CellRecord where, Cell cell) throws Unreadable {
        put(where.getRow(), where.getColumn(), cell);
    }

    private void put(int row, int column, Cell cell) throws Unreadable {
        if (column < 0 || column >= COLUMNS) {
            throw Unreadable.of("file-damaged");
        }
        List<Cell> cells = rows.computeIfAbsent(row, each -> new ArrayList<>());
        while (cells.size() <= column) {
            cells.add(Cell.EMPTY);
        }
        cells.set(column, cell);
    }

    Grid grid(String name) throws Unreadable {
        GridRows gathered = new GridRows(book.allowance);
        for (Map.Entry<Integer, List<Cell>> row : rows.entrySet()) {
            gathered.add(row.getKey() + 1, row.getValue(), hidden.get(row.getKey()));
        }
        return new Grid(Optional.of(name), false, gathered.list(), merges.list());
    }
}
