package bandwright.rules.table;

import java.text.Normalizer;
import java.util.Locale;

/**
 * Names compare trimmed, case-folded and with inner white space collapsed: " Mug  11 " is "mug 11". An accented letter is
 * one letter, whether a file system writes it as one character or as two.
 */
public final class Names {
    private Names() {}

    public static String fold(String name) {
        StringBuilder out = new StringBuilder(name.length());
        boolean gap = false;
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
                gap = out.length() > 0;
                continue;
            }
            if (gap) {
                out.append(' ');
                gap = false;
            }
            out.append(c);
        }
        // Upper, then lower: the two steps of simple case folding, so that a final and a medial sigma are one.
        String folded = out.toString().toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
        return Normalizer.normalize(folded, Normalizer.Form.NFC);
    }

    public static boolean same(String one, String other) {
        return fold(one).equals(fold(other));
    }
}
