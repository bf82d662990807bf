package bandwright.pipeline.docs;

import static bandwright.pipeline.docs.Doc.say;

import bandwright.rules.table.TableKind;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** docs/figures.md: every cell of the built-in rulebook that holds a figure, with where the figure is from. */
final class FiguresPage {
    private static final Path TABLES = Path.of("..", "rules", "tables");
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    /** Names, words of the trade and places on the shelf: a digit in them is no figure. */
    private static final Set<String> NO_FIGURES = Set.of(
            "aliases", "name", "shelf", "artwork", "artwork_2", "papers", "cautions", "header", "evidence", "note");

    private static final Map<TableKind, List<String>> ROW_NAMES = Map.of(
            TableKind.SHOP, List.of("key"),
            TableKind.PRESS_SETTINGS, List.of("material", "heat_kind", "sku"));

    private FiguresPage() {}

    static String text() {
        Doc page = new Doc()
                .heading(1, say("figures.title"))
                .paragraph(say("figures.made"))
                .paragraph(say("figures.how"));
        for (TableKind kind : TableKind.values()) {
            List<List<String>> rows = rows(kind);
            if (!rows.isEmpty()) {
                page.heading(2, kind.file())
                        .paragraph(say("figures." + RulebookPage.name(kind)))
                        .table(say("figures.head"), rows);
            }
        }
        return page.text();
    }

    private static List<List<String>> rows(TableKind kind) {
        List<List<String>> rows = new ArrayList<>();
        for (CSVRecord row : read(kind)) {
            List<String> figures = figures(kind, row);
            if (!figures.isEmpty()) {
                rows.add(
                        List.of(name(kind, row), String.join("; ", figures), cell(row, "evidence"), cell(row, "note")));
            }
        }
        return rows;
    }

    private static List<String> figures(TableKind kind, CSVRecord row) {
        List<String> figures = new ArrayList<>();
        for (String column : kind.columns()) {
            boolean isName = NO_FIGURES.contains(column) || rowName(kind).contains(column);
            if (!isName && cell(row, column).matches(".*[0-9].*")) {
                figures.add(kind == TableKind.SHOP ? cell(row, column) : column + " " + cell(row, column));
            }
        }
        return figures;
    }

    private static List<String> rowName(TableKind kind) {
        return ROW_NAMES.getOrDefault(kind, kind.columns().subList(0, 1));
    }

    private static String name(TableKind kind, CSVRecord row) {
        return String.join(
                ", ",
                rowName(kind).stream()
                        .map(column -> cell(row, column))
                        .filter(cell -> !cell.isEmpty())
                        .toList());
    }

    private static String cell(CSVRecord row, String column) {
        return row.isSet(column) ? row.get(column).strip() : "";
    }

    private static List<CSVRecord> read(TableKind kind) {
        try (var reader = Files.newBufferedReader(TABLES.resolve(kind.file()))) {
            return FORMAT.parse(reader).getRecords();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
