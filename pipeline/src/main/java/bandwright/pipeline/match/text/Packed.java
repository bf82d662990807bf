package bandwright.pipeline.match.text;

import bandwright.pipeline.rows.Entities;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A packed cell, taken apart: {@code Name: Ada, Date: 3 May} is the name "Ada" and the date "3 May". It is split before
 * known labels only; a comma, semicolon or line break before a label belongs to neither text.
 *
 * @param unlabelled the words before the first label; mostly empty
 * @param parts in the order of the cell
 */
record Packed(String unlabelled, List<Part> parts) {
    private static final Pattern BREAK = Pattern.compile("(?i)<br\\s{0,3}/?>");

    /** A label as it stands there, the field that it begins, and the text behind it. */
    record Part(String label, String field, String text) {}

    Packed {
        parts = List.copyOf(parts);
    }

    /** A text as the buyer typed it: the site's entities undone, once, its edges trimmed. */
    static String typed(String cell) {
        String lines =
                BREAK.matcher(cell).replaceAll("\n").replace("\r\n", "\n").replace('\r', '\n');
        return trimmed(Entities.decode(lines));
    }

    static String trimmed(String text) {
        String words = withoutEnd(text);
        int start = 0;
        while (start < words.length() && isSpace(words.charAt(start))) {
            start++;
        }
        return words.substring(start);
    }

    private static String withoutEnd(String text) {
        int end = text.length();
        while (end > 0 && isSpace(text.charAt(end - 1))) {
            end--;
        }
        return text.substring(0, end);
    }

    private static boolean isSpace(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c);
    }

    /** What parts two fields belongs to neither. */
    private static String withoutParting(String text) {
        String words = withoutEnd(text);
        boolean isParted = words.endsWith(",") || words.endsWith(";");
        return isParted ? words.substring(0, words.length() - 1) : words;
    }

    static Packed parse(String cell, Labels labels) {
        String text = labels.withoutPreface(typed(cell));
        Matcher label = labels.pattern().matcher(text);
        List<Part> parts = new ArrayList<>();
        String unlabelled = text;
        int start = 0;
        String open = "";
        while (label.find()) {
            String before = withoutParting(text.substring(start, label.start()));
            if (open.isEmpty()) {
                unlabelled = before;
            } else {
                parts.add(part(open, before, labels));
            }
            open = label.group(1);
            start = label.end();
        }
        if (!open.isEmpty()) {
            parts.add(part(open, text.substring(start), labels));
        }
        return new Packed(trimmed(unlabelled), parts);
    }

    private static Part part(String label, String text, Labels labels) {
        return new Part(label, labels.field(label), trimmed(text));
    }
}
