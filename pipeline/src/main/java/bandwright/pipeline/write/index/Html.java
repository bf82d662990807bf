package bandwright.pipeline.write.index;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Set;

/**
 * A page of HTML as it grows. The only place that knows how a text is made harmless: whatever a stranger wrote comes out
 * as the letters that it is. A name with {@code <} in it shows that sign and opens no element.
 */
public final class Html {
    /** Elements within a sentence: a line break after them would show as a space. */
    private static final Set<String> INLINE = Set.of("a", "span", "strong");

    private final StringBuilder out = new StringBuilder("<!DOCTYPE html>\n");

    Html() {}

    /** Opens an element; attributes are names and values in turn. */
    public Html open(String element, String... attributes) {
        out.append('<').append(element);
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ').append(attributes[i]).append("=\"");
            escape(attributes[i + 1]);
            out.append('"');
        }
        out.append('>');
        return this;
    }

    public Html close(String element) {
        out.append("</").append(element).append(INLINE.contains(element) ? ">" : ">\n");
        return this;
    }

    public Html text(String words) {
        escape(words);
        return this;
    }

    /** An element with nothing but words in it. */
    public Html line(String element, String words, String... attributes) {
        return open(element, attributes).text(words).close(element);
    }

    public Html link(String target, String words) {
        return line("a", words, "href", target);
    }

    /** Our own style sheet, which holds no stranger's text. */
    Html style(String css) {
        out.append("<style>\n").append(css).append("</style>\n");
        return this;
    }

    private void escape(String words) {
        for (int i = 0; i < words.length(); i++) {
            char c = words.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> {
                    if (!turnsLine(c)) {
                        out.append(Character.isISOControl(c) && c != '\n' ? ' ' : c);
                    }
                }
            }
        }
    }

    /** Invisible characters that make a line read the other way round: a name must not turn its neighbours. */
    private static boolean turnsLine(char c) {
        return (c >= '\u202A' && c <= '\u202E') || (c >= '\u2066' && c <= '\u2069');
    }

    /** A number of a drawing, with two decimals. */
    static String number(double value) {
        return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).toString();
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
