package bandwright.pipeline.write.workbook;

import bandwright.pipeline.RowFate;
import bandwright.pipeline.held.HeldFile;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.rows.Cell;
import bandwright.pipeline.rows.From;
import bandwright.pipeline.rows.Header;
import bandwright.rules.orders.OrderField;
import bandwright.rules.table.Names;
import bandwright.rules.words.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.dhatim.fastexcel.Worksheet;

/** The held rows of one input sheet: its own columns in its own order, then reason, cure and from. */
final class HeldSheet {
    private final Header header;
    /** Columns of the input sheet that are written; of a held file that was dropped again, not its own last ones. */
    private final List<Integer> columns;
    /** Whether any of its rows has a question to the buyer. */
    private final boolean asks;

    private HeldSheet(List<RowFate> rows) {
        header = rows.get(0).row().header();
        int width = rows.stream()
                .mapToInt(fate -> fate.row().cells().size())
                .reduce(header.texts().size(), Math::max);
        asks = rows.stream().anyMatch(fate -> !ask(fate).isEmpty());
        boolean isHeldFile = HeldFile.has(header.texts());
        columns = IntStream.range(0, width)
                .filter(column -> !isHeldFile || !HeldFile.isOwn(headerText(column)))
                .boxed()
                .toList();
    }

    static void write(Worksheet worksheet, List<RowFate> rows, Choices choices) {
        HeldSheet held = new HeldSheet(rows);
        TextSheet sheet = new TextSheet(worksheet, held.headerTexts());
        for (RowFate fate : rows) {
            int row = sheet.next(held.texts(fate));
            held.faulty(fate).forEach(column -> sheet.mark(row, column));
        }
        sheet.finish();
        for (OrderField field : choices.fields()) {
            held.header
                    .find(field)
                    .map(held.columns::indexOf)
                    .filter(column -> column >= 0)
                    .ifPresent(column -> choices.offer(worksheet, field, column, 1, rows.size()));
        }
    }

    private List<String> headerTexts() {
        List<String> texts = new ArrayList<>();
        columns.forEach(column -> texts.add(headerText(column)));
        if (asks) {
            texts.add(HeldFile.ASK);
        }
        texts.addAll(HeldFile.COLUMNS);
        return texts;
    }

    private List<String> texts(RowFate fate) {
        List<String> texts = new ArrayList<>();
        columns.forEach(column -> texts.add(cellText(fate, column)));
        if (asks) {
            texts.add(ask(fate));
        }
        texts.add(joined(
                fate,
                held -> Words.say(
                        "held-workbook.reason",
                        held.reason().message(),
                        held.reason().code())));
        texts.add(joined(fate, held -> held.reason().cure()));
        texts.add(from(fate));
        return texts;
    }

    private static String ask(RowFate fate) {
        return String.join(
                "\n",
                fate.held().stream()
                        .flatMap(held -> held.ask().stream())
                        .distinct()
                        .toList());
    }

    /** The cell as it came; of a row that is made in part, the quantity is what is still to make. */
    private String cellText(RowFate fate, int column) {
        boolean isQuantity = header.find(OrderField.QUANTITY).equals(Optional.of(column));
        int copies = copies(fate);
        if (isQuantity
                && copies > 0
                && copies < fate.line().map(OrderLine::quantity).orElse(0)) {
            return Integer.toString(copies);
        }
        Cell cell = cell(fate, column);
        return cell.date().map(LocalDate::toString).orElse(cell.text());
    }

    /** How many copies of a set its held pieces are; begun ones count. */
    private static int copies(RowFate fate) {
        return fate.line()
                .map(line -> {
                    int inCopy = line.pieces() / line.quantity();
                    return (fate.heldPieces() + inCopy - 1) / inCopy;
                })
                .orElse(0);
    }

    private static Cell cell(RowFate fate, int column) {
        List<Cell> cells = fate.row().cells();
        return column < cells.size() ? cells.get(column) : Cell.EMPTY;
    }

    private static String joined(RowFate fate, Function<HeldRow, String> words) {
        return String.join(" ", fate.held().stream().map(words).distinct().toList());
    }

    /** A row that was held before keeps the place where it first was read. */
    private String from(RowFate fate) {
        From from = fate.row().from();
        String here = String.join(" | ", from.file(), from.sheet().orElse(""), Integer.toString(from.row()));
        boolean wasHeld = columns.size() < header.texts().size();
        return findColumn("from")
                .filter(column -> wasHeld)
                .map(column -> cell(fate, column).text())
                .filter(text -> !text.isBlank())
                .orElse(here);
    }

    /** Which written columns hold a faulty cell. */
    private List<Integer> faulty(RowFate fate) {
        return fate.held().stream()
                .flatMap(held -> header.find(held.reason().field()).stream())
                .map(columns::indexOf)
                .filter(column -> column >= 0)
                .distinct()
                .toList();
    }

    private String headerText(int column) {
        return column < header.texts().size() ? header.texts().get(column) : "";
    }

    private Optional<Integer> findColumn(String name) {
        return IntStream.range(0, header.texts().size())
                .filter(column -> Names.same(name, headerText(column)))
                .boxed()
                .findFirst();
    }
}
