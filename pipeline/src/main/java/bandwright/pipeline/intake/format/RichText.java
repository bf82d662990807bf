package bandwright.pipeline.intake.format;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamException;

/**
 * The plain text of a string that may be made of runs with their own type: the runs in a row, without the phonetic
 * hints beside them (ECMA-376 Part 1, 18.4.4 to 18.4.12). Characters that XML can't hold are written {@code _x000D_}
 * (22.9.2.19).
 */
final class RichText {
    private static final Pattern ESCAPE = Pattern.compile("_x([0-9A-Fa-f]{4})_");

    private RichText() {}

    /** Reads on to the end of the element of that name. */
    static String read(Xml xml, String until, int row) throws XMLStreamException, Unreadable {
        StringBuilder text = new StringBuilder();
        boolean inText = false;
        boolean inHint = false;
        while (xml.next() && !xml.ends(until)) {
            if (xml.starts("rPh")) {
                inHint = true;
            } else if (xml.ends("rPh")) {
                inHint = false;
            } else if (xml.starts("t")) {
                inText = !inHint;
            } else if (xml.ends("t")) {
                inText = false;
            } else if (inText && xml.isText()) {
                xml.addTextTo(text);
                Cells.checkLength(text.length(), row);
            }
        }
        return unescaped(text.toString());
    }

    static String unescaped(String text) {
        if (!text.contains("_x")) {
            return text;
        }
        Matcher escape = ESCAPE.matcher(text);
        StringBuilder out = new StringBuilder();
        while (escape.find()) {
            char c = (char) Integer.parseInt(escape.group(1), 16);
            escape.appendReplacement(out, Matcher.quoteReplacement(String.valueOf(c)));
        }
        return paired(escape.appendTail(out));
    }

    /** Half a character, which no file can be written with, becomes the sign for an unknown one. */
    private static String paired(StringBuilder text) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints()
                .map(c -> c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE ? 0xFFFD : c)
                .forEach(out::appendCodePoint);
        return out.toString();
    }
}
