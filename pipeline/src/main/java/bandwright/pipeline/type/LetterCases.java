package bandwright.pipeline.type;

import bandwright.rules.designs.LetterCase;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What becomes of the letters as typed, by Unicode's case rules (The Unicode Standard, 3.13, and SpecialCasing.txt) and
 * those of the text's language: "straße" in capitals is STRASSE, "ΑΔΑΣ" in small letters αδας, "izmir" with capitals in
 * Turkish İzmir, "ijsland" in Dutch IJsland.
 */
final class LetterCases {
    /** Letters, their marks and digits; a point or apostrophe only between two letters (UAX #29: WB6 and WB7). */
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{M}\\p{N}\\p{Sk}\\p{Cf}_]+(?:(?<=[\\p{L}\\p{M}])"
            + "['.:\\u2019\\u2018\\u00B7\\u2024\\u2027](?=\\p{L})[\\p{L}\\p{M}\\p{N}\\p{Sk}\\p{Cf}_]+)*");

    private LetterCases() {}

    static String set(Optional<LetterCase> wish, Locale language, String text) {
        String composed = Normalizer.normalize(text, Normalizer.Form.NFC);
        if (wish.isEmpty()) {
            return composed;
        }
        String cased =
                switch (wish.get()) {
                    case UPPER -> upper(composed, language);
                    case LOWER -> composed.toLowerCase(language);
                    case TITLE -> titled(composed, language);
                };
        return Normalizer.normalize(cased, Normalizer.Form.NFC);
    }

    /** Greek capitals have no accents (CLDR's rule of the language el); a dialytika stays. */
    private static String upper(String text, Locale language) {
        if (!language.getLanguage().equals("el")) {
            return text.toUpperCase(language);
        }
        String bare = Normalizer.normalize(text, Normalizer.Form.NFD)
                // Two vowels apart, as the accent on the first shows, stay apart: "Μάιος" is ΜΑΪΟΣ.
                .replaceAll("(?<=[αεουΑΕΟΥ]\\u0301)([ιυΙΥ])(?!\\p{M})", "$1\u0308")
                .replaceAll("(?<=[\\p{IsGreek}])([\\u0308]?)[\\u0300\\u0301\\u0342\\u0313\\u0314]+", "$1");
        return bare.toUpperCase(language);
    }

    /** Each word's first letter in title case, the others small; a word typed in both, such as McKenzie, as it is. */
    private static String titled(String text, Locale language) {
        StringBuilder out = new StringBuilder();
        Matcher words = WORD.matcher(text);
        int from = 0;
        while (words.find()) {
            out.append(text, from, words.start());
            out.append(isMixed(words.group()) ? words.group() : capital(words.group(), language));
            from = words.end();
        }
        return out.append(text.substring(from)).toString();
    }

    private static boolean isMixed(String word) {
        return Character.isUpperCase(word.codePointAt(0)) && word.codePoints().anyMatch(Character::isLowerCase);
    }

    private static String capital(String word, Locale language) {
        String small = word.toLowerCase(language);
        if (language.getLanguage().equals("nl") && small.startsWith("ij")) {
            return "IJ" + small.substring(2);
        }
        int at = 0;
        while (at < small.length() && isCaseless(small.codePointAt(at))) {
            at += Character.charCount(small.codePointAt(at));
        }
        if (at == small.length()) {
            return small;
        }
        int c = small.codePointAt(at);
        return small.substring(0, at) + title(c, language) + small.substring(at + Character.charCount(c));
    }

    /** Before a word's first letter, as the turned comma of Hawaiian names; a digit is none: 3rd stays as it is. */
    private static boolean isCaseless(int c) {
        return c >= 0x2B0 && c <= 0x2FF && Character.isLetter(c) && !Character.isLowerCase(c);
    }

    private static String title(int c, Locale language) {
        String letter = Character.toString(c);
        String capital = letter.toUpperCase(language);
        if (capital.codePointCount(0, capital.length()) == 1) {
            boolean isOwn = Character.toTitleCase(c) != Character.toUpperCase(c);
            return isOwn ? Character.toString(Character.toTitleCase(c)) : capital;
        }
        String decomposed = Normalizer.normalize(letter, Normalizer.Form.NFD);
        int first = decomposed.codePointAt(0);
        if (first != c) {
            return Character.toString(first).toUpperCase(language) + decomposed.substring(Character.charCount(first));
        }
        // Of two letters the first alone is large: Ss; what is no letter's case, as an apostrophe, leaves it to the
        // next.
        int lead = capital.codePointAt(0);
        return Character.isUpperCase(lead)
                ? Character.toString(lead)
                        + capital.substring(Character.charCount(lead)).toLowerCase(Locale.ROOT)
                : capital;
    }
}
