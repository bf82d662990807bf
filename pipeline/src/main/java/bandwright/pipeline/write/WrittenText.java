package bandwright.pipeline.write;

import java.util.function.IntPredicate;

/**
 * Text that strangers typed, made fit to be written. Half a surrogate pair, and in XML a control character, can't stand
 * in a file: each becomes U+FFFD, so that a reader sees that something was there.
 */
public final class WrittenText {
    private static final int REPLACEMENT = 0xFFFD;

    private WrittenText() {}

    /** Fit for UTF-8. */
    public static String unicode(String text) {
        return replaced(text, c -> !isHalf(c));
    }

    /** Fit for XML 1.0 (W3C, section 2.2: production Char). */
    public static String xml(String text) {
        return replaced(text, WrittenText::isXml);
    }

    /** Fit for the text of an XML element. */
    public static String markup(String text) {
        return xml(text).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    private static String replaced(String text, IntPredicate fit) {
        if (text.codePoints().allMatch(fit)) {
            return text;
        }
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().map(c -> fit.test(c) ? c : REPLACEMENT).forEach(out::appendCodePoint);
        return out.toString();
    }

    private static boolean isHalf(int c) {
        return c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
    }

    private static boolean isXml(int c) {
        return (c >= 0x20 && c <= 0xFFFD && !isHalf(c)) || c == '\t' || c == '\n' || c == '\r' || c > 0xFFFF;
    }
}
