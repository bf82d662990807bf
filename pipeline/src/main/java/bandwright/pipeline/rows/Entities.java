package bandwright.pipeline.rows;

import java.nio.charset.Charset;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Undoes, once, how selling sites write letters into their exports: of {@code Tide & Tern} they make "Tide &amp;amp; Tern",
 * of {@code it's} "it&amp;#39;s". What a buyer typed as an entity is one again; an unknown name stays as it is.
 */
public final class Entities {
    private static final Pattern ENTITY =
            Pattern.compile("&(?:#[0-9]{1,7}|#[xX][0-9a-fA-F]{1,6}|[A-Za-z][A-Za-z0-9]{1,8});");

    /** U+00A0 to U+00FF in their order: HTML 4.01, 24.2.1. */
    private static final String LATIN_1 = "nbsp iexcl cent pound curren yen brvbar sect uml copy ordf laquo not shy reg"
            + " macr deg plusmn sup2 sup3 acute micro para middot cedil sup1 ordm raquo frac14 frac12 frac34 iquest"
            + " Agrave Aacute Acirc Atilde Auml Aring AElig Ccedil Egrave Eacute Ecirc Euml Igrave Iacute Icirc Iuml ETH"
            + " Ntilde Ograve Oacute Ocirc Otilde Ouml times Oslash Ugrave Uacute Ucirc Uuml Yacute THORN szlig agrave"
            + " aacute acirc atilde auml aring aelig ccedil egrave eacute ecirc euml igrave iacute icirc iuml eth ntilde"
            + " ograve oacute ocirc otilde ouml divide oslash ugrave uacute ucirc uuml yacute thorn yuml";

    private static final Map<String, String> NAMED = named();

    private Entities() {}

    private static Map<String, String> named() {
        Map<String, String> named = new HashMap<>(Map.of("amp", "&", "lt", "<", "gt", ">", "quot", "\"", "apos", "'"));
        char next = '\u00A0';
        for (String name : LATIN_1.split(" ", -1)) {
            named.put(name, String.valueOf(next++));
        }
        // HTML 4.01, 24.3.1 and 24.4.1: those that word processors put into a text.
        named.putAll(Map.of(
                "ndash", "\u2013", "mdash", "\u2014", "lsquo", "\u2018", "rsquo", "\u2019", "ldquo", "\u201C", "rdquo",
                "\u201D", "hellip", "\u2026", "bull", "\u2022", "trade", "\u2122", "euro", "\u20AC"));
        named.putAll(Map.of(
                "hearts", "\u2665", "OElig", "\u0152", "oelig", "\u0153", "Scaron", "\u0160", "scaron", "\u0161",
                "Yuml", "\u0178"));
        return named;
    }

    public static String decode(String text) {
        if (text.indexOf('&') < 0) {
            return text;
        }
        return ENTITY.matcher(text).replaceAll(entity -> Matcher.quoteReplacement(meaning(entity.group())));
    }

    private static String meaning(String written) {
        String inside = written.substring(1, written.length() - 1);
        if (inside.charAt(0) != '#') {
            return NAMED.getOrDefault(inside, written);
        }
        boolean isHex = inside.charAt(1) == 'x' || inside.charAt(1) == 'X';
        int code = isHex ? Integer.parseInt(inside.substring(2), 16) : Integer.parseInt(inside.substring(1));
        if (code >= 0x80 && code < 0xA0) { // meant as windows-1252: WHATWG HTML, 13.2.5.80
            return new String(new byte[] {(byte) code}, Charset.forName("windows-1252"));
        }
        boolean isLetter = Character.isValidCodePoint(code)
                && (code < Character.MIN_SURROGATE || code > Character.MAX_SURROGATE)
                && (code == '\n' || code == '\t' || !Character.isISOControl(code));
        return isLetter ? Character.toString(code) : written;
    }
}
