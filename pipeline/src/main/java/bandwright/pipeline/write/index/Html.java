package bandwright.pipeline.write.index;

/**
 * A page of HTML as it grows. The only place that knows how a text is made harmless: whatever a stranger wrote comes
 * out as the letters that it is.
 */
final class Html {
    private final StringBuilder out = new StringBuilder("<!DOCTYPE html>\n");

    /** Opens an element; attributes are names and values in turn. */
    Html open(String element, String... attributes) {
        out.append('<').append(element);
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ').append(attributes[i]).append("=\"");
            escape(attributes[i + 1]);
            out.append('"');
        }
        out.append('>');
        return this;
    }

    Html close(String element) {
        out.append("</").append(element).append(">\n");
        return this;
    }

    Html text(String words) {
        escape(words);
        return this;
    }

    /** An element with nothing but words in it. */
    Html line(String element, String words, String... attributes) {
        return open(element, attributes).text(words).close(element);
    }

    Html link(String file, String words) {
        return line("a", words, "href", file);
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
                default -> out.append(Character.isISOControl(c) && c != '\n' ? ' ' : c);
            }
        }
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
