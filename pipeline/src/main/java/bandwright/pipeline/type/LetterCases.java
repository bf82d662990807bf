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
    private static final Pattern CLUSTER = Pattern.compile("\\X");

    /** Letters, their marks and digits; a point or apostrophe only between two letters (UAX #29: WB6 and WB7). */
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{M}\\p{N}\\p{So}\\p{Sk}\\p{Cf}_]+(?:(?<=[\\p{L}\\p{M}])"
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
                .replaceAll("(?<=[αεουΑΕΟΥ]\\u0301)([ιυΙΥ])(?!\\p{M})", "$1\\u0308")
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
        Matcher first = CLUSTER.matcher(small);
        int end = first.find() ? first.end() : 0;
        String letter = small.substring(0, end);
        // A letter that follows another, as the second s of STRASSE's Ss, is small.
        String decomposed = Normalizer.normalize(letter, Normalizer.Form.NFD);
        return title(decomposed, language) + small.substring(end);
    }

    /** One letter with its marks. */
    private static String title(String letter, Locale language) {
        int c = letter.codePointAt(0);
        String marks = letter.substring(Character.charCount(c));
        int title = Character.toTitleCase(c);
        String capital = (Character.toString(c)).toUpperCase(language);
        boolean isOne = capital.codePointCount(0, capital.length()) == 1;
        if (isOne && title != Character.toUpperCase(c)) {
            return Character.toString(title) + marks;
        }
        int first = capital.codePointAt(0);
        int width = Character.charCount(first);
        if (isOne || Character.isUpperCase(first)) {
            return Character.toString(first) + capital.substring(width).toLowerCase(language) + marks;
        }
        return capital + marks;
    }
}
