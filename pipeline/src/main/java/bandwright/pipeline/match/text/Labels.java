package bandwright.pipeline.match.text;

import bandwright.rules.Rulebook;
import bandwright.rules.designs.TextField;
import bandwright.rules.orders.OrderColumn;
import bandwright.rules.orders.OrderField;
import bandwright.rules.table.Names;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The words before a colon that begin a text in a packed cell: {@code Name:}, where a design has that field or a column
 * headed so fills it. Other words before a colon are part of a text: {@code Message: Meet me at: the lamp room}.
 */
final class Labels {
    /** By the folded label, the field that it begins. */
    private final Map<String, String> fields = new LinkedHashMap<>();

    private final Pattern label;
    private final Pattern preface;

    /**
     * @param site whose headers are known beside those of every site
     * @param own the fields of the row's designs: their own names go before everything
     */
    Labels(Rulebook rules, String site, Collection<String> own) {
        own.forEach(field -> put(field, field));
        Set<String> prefaces = new LinkedHashSet<>();
        for (OrderColumn column : rules.orderColumns().list()) {
            if (!column.site().isBlank() && !Names.same(column.site(), site)) {
                continue;
            }
            if (column.field().isText()) {
                put(column.header(), column.field().textField());
            } else if (column.field().equals(OrderField.PERSONALISATION)) {
                prefaces.add(column.header());
            }
        }
        rules.texts().list().stream().map(TextField::field).forEach(field -> put(field, field));
        label = pattern("(?<![\\p{L}\\p{N}])", fields.keySet());
        prefaces.removeIf(header -> fields.containsKey(Names.fold(header)));
        preface = pattern("^\\s*", prefaces);
    }

    private void put(String label, String field) {
        fields.putIfAbsent(Names.fold(label), field);
        fields.putIfAbsent(Names.fold("text: " + label), field);
    }

    /** The longest label first, so that "first name:" isn't the label "name:" behind a word. */
    private static Pattern pattern(String before, Collection<String> labels) {
        String any = labels.stream()
                .filter(label -> !label.isBlank())
                .sorted(Comparator.comparing(String::length).reversed().thenComparing(Comparator.naturalOrder()))
                .map(label -> Pattern.compile("\\s+")
                        .splitAsStream(label.strip())
                        .map(Pattern::quote)
                        .collect(Collectors.joining("[\\s\\h]+")))
                .collect(Collectors.joining("|"));
        String none = "(?!)";
        return Pattern.compile(
                any.isEmpty() ? none : before + "(" + any + ")[\\s\\h]*[:\uFF1A]",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** Finds labels; their words are group 1. */
    Pattern pattern() {
        return label;
    }

    /** Whatever the site calls the whole cell may stand in front of it: "Personalisation: Ada". */
    String withoutPreface(String cell) {
        return preface.matcher(cell).replaceFirst("");
    }

    String field(String label) {
        return fields.getOrDefault(Names.fold(label), label);
    }
}
