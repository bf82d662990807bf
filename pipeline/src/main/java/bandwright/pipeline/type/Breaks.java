package bandwright.pipeline.type;

import java.lang.Character.UnicodeScript;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a line may end, by Unicode's line rules (UAX #14): at spaces, but not before what closes or behind what opens;
 * behind a hyphen between letters, at a long dash; between Chinese or Japanese characters, between emoji, and between Thai
 * words. "Mary-Jane « Ada »" may be parted behind "Mary-" and "Jane". Of the breaks that the rules allow these are the
 * ones that a name or a verse wants: "and/or" and "10/12" stay whole.
 */
final class Breaks {
    /** What stays on one line, and whether a space follows it where the line goes on. */
    record Piece(String text, boolean isSpaced) {}

    /** Those at which a line may end, a line break among them; not the no-break ones. */
    private static final Pattern SPACES =
            Pattern.compile("[\\s\\x85\\u1680\\u2000-\\u2006\\u2008-\\u200B\\u2028\\u2029" + "\\u205F\\u3000]+");

    /** Signs that a line never begins with, not behind a space either (UAX #14: LB13). */
    private static final String CLOSERS =
            "!?:;,./\u2026\u203D\u203C\u2060\uFEFF" + "\u3001\u3002\u30FC\uFF01\uFF0C\uFF0E\uFF1A\uFF1B\uFF1F";

    private static final String DASHES = "-\u2010\u2013\u2014\u2026";
    private static final char JOINER = '\u200D';
    private static final String EM_DASH = "\u2014";
    private static final Pattern CLUSTER = Pattern.compile("\\X");
    private static final Set<UnicodeScript> UNSPACED =
            EnumSet.of(UnicodeScript.HAN, UnicodeScript.HIRAGANA, UnicodeScript.KATAKANA);

    private static final Locale THAI = Locale.forLanguageTag("th");

    private Breaks() {}

    /** The pieces of a text between its breaks, in their order; no piece of a blank one. */
    static List<Piece> pieces(String text) {
        List<Piece> pieces = new ArrayList<>();
        for (String word : words(text)) {
            pieces.addAll(parts(word));
        }
        return pieces;
    }

    /** Between spaces; a sign that may not stand alone at a line's end or beginning stays with its neighbour. */
    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        for (String word : SPACES.split(text, -1)) {
            int last = words.size() - 1;
            boolean isBound = last >= 0 && (opens(words.get(last)) || closes(word));
            if (isBound) {
                words.set(last, words.get(last) + " " + word);
            } else if (!word.isEmpty()) {
                words.add(word);
            }
        }
        return words;
    }

    /** A quotation mark opens where no letter is before it. */
    private static boolean opens(String word) {
        int end = word.length();
        while (end > 1 && isAttached(word.charAt(end - 1))) {
            end--;
        }
        int last = word.codePointBefore(end);
        int before = end - Character.charCount(last);
        boolean isFirst = before == 0 || !isWordy(word.codePointBefore(before));
        int type = Character.getType(last);
        return type == Character.START_PUNCTUATION
                || (type == Character.INITIAL_QUOTE_PUNCTUATION && isFirst)
                || last == '\u00A1'
                || last == '\u00BF';
    }

    /** A quotation mark closes where no letter follows it. */
    private static boolean closes(String word) {
        if (word.isEmpty()) {
            return false;
        }
        int first = word.codePointAt(0);
        int width = Character.charCount(first);
        boolean isLast = word.length() == width || !Character.isLetterOrDigit(word.codePointAt(width));
        int type = Character.getType(first);
        return type == Character.END_PUNCTUATION
                || (type == Character.FINAL_QUOTE_PUNCTUATION && isLast)
                || CLOSERS.indexOf(first) >= 0;
    }

    /** Within a word, never within what is seen as one character. */
    private static List<Piece> parts(String word) {
        List<Piece> parts = new ArrayList<>();
        Matcher clusters = CLUSTER.matcher(word);
        int from = 0;
        int before = -1;
        while (clusters.find()) {
            int at = clusters.start();
            if (at > 0 && isBreak(word, before, at, clusters.end())) {
                parts.add(new Piece(word.substring(from, at), false));
                from = at;
            }
            before = at;
        }
        parts.add(new Piece(word.substring(from), true));
        return parts;
    }

    /**
     * @param before where the character before it begins
     * @param end where the character behind it ends
     */
    private static boolean isBreak(String word, int before, int at, int end) {
        String first = word.substring(before, at);
        String next = word.substring(at, end);
        int a = first.codePointAt(0);
        int b = next.codePointAt(0);
        if (word.charAt(at - 1) == JOINER) {
            return false;
        }
        if (isEmoji(a) && isEmoji(b)) {
            return true;
        }
        if (isUnspaced(a) && isUnspaced(b)) {
            return isBoundary(Locale.ROOT, word, at);
        }
        if (UnicodeScript.of(a) == UnicodeScript.THAI && UnicodeScript.of(b) == UnicodeScript.THAI) {
            return isBoundary(THAI, word, at);
        }
        return isAtDash(word, before, at, first, next);
    }

    /** Behind a hyphen, dash or ellipsis that stands between letters; at a long dash before it, too. */
    private static boolean isAtDash(String word, int before, int at, String first, String next) {
        if (next.equals(EM_DASH)) {
            return isPlainLetter(first.codePointAt(0)) && at + 1 < word.length();
        }
        return DASHES.contains(first)
                && before > 0
                && isLetterOrDigit(word.codePointBefore(before))
                && isPlainLetter(next.codePointAt(0));
    }

    /** One that a line may begin or end with beside a dash; a Hebrew word keeps what its hyphen hangs on (LB21a). */
    private static boolean isPlainLetter(int c) {
        UnicodeScript script = UnicodeScript.of(c);
        return (Character.isLetter(c) || Character.getType(c) == Character.NON_SPACING_MARK)
                && script != UnicodeScript.HEBREW
                && !UNSPACED.contains(script)
                && !isEastAsianSign(c);
    }

    private static boolean isLetterOrDigit(int c) {
        return isPlainLetter(c) || Character.isDigit(c);
    }

    /** Marks and joiners are of the sign before them. */
    private static boolean isAttached(char c) {
        int type = Character.getType(c);
        return type == Character.FORMAT || type == Character.NON_SPACING_MARK;
    }

    private static boolean isWordy(int c) {
        return Character.isLetterOrDigit(c) || Character.getType(c) == Character.NON_SPACING_MARK;
    }

    /** Characters of scripts that are written without spaces, and their points and brackets. */
    private static boolean isUnspaced(int c) {
        return UNSPACED.contains(UnicodeScript.of(c)) || isEastAsianSign(c);
    }

    /** The block of points and brackets, and the mark that makes a vowel long. */
    private static boolean isEastAsianSign(int c) {
        return (c >= 0x3000 && c <= 0x303F) || c == 0x30FC;
    }

    private static boolean isBoundary(Locale language, String word, int at) {
        BreakIterator lines = BreakIterator.getLineInstance(language);
        lines.setText(word);
        return lines.isBoundary(at);
    }

    /** The pictures in colour on a telephone; not flags' letters, and not the tones of skin. */
    private static boolean isEmoji(int c) {
        return c >= 0x1F300 && c <= 0x1FAFF && !(c >= 0x1F3FB && c <= 0x1F3FF) && Character.isDefined(c);
    }
}
