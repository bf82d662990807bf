package bandwright.pipeline.type;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.designs.LetterCase;
import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.text.BreakIterator;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedSet;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Line breaks and letter case beside ICU, which follows UAX #14, UAX #29, SpecialCasing.txt and CLDR. */
final class UnicodeRulesTest {
    private static final String[] SCRAPS = {
        "Ada",
        "Fell",
        "Zoë",
        "Ιωάννα",
        "Йорик",
        "שלום",
        "آدا",
        "e\u0301",
        "1998",
        "7",
        " ",
        " ",
        " ",
        "  ",
        "\u00A0",
        "-",
        "-",
        "\u2010",
        "\u2011",
        "\u2013",
        "\u2014",
        "/",
        "&",
        "'",
        "\u2019",
        "\"",
        "\u201C",
        "\u201D",
        "\u201E",
        "\u00AB",
        "\u00BB",
        "(",
        ")",
        "[",
        "]",
        "!",
        "?",
        ".",
        ",",
        ";",
        ":",
        "\u2026",
        "%",
        "$",
        "\u00A3",
        "\u20AC",
        "\u00B0",
        "#",
        "+",
        "=",
        "@",
        "_",
        "|",
        "*",
        "~",
        "\u2665",
        "\u2764\uFE0F",
        "\u2605",
        "\uD83D\uDE00",
        "\uD83D\uDC15",
        "\uD83D\uDC4D\uD83C\uDFFD",
        "\uD83D\uDC69\u200D\uD83C\uDF73",
        "\uD83C\uDDEC\uD83C\uDDE7",
        "日本語",
        "テスト",
        "。",
        "、",
        "「",
        "」",
        "ー",
        "\u200B",
        "\u200D",
        "\u2060",
        "\u00AD",
        "สวัสดีครับ",
        "\u00BF",
        "\u00A1",
        "\u00BD",
        "\u2122",
        "\n"
    };

    /** No line ends where the rules forbid it. */
    @Test
    void everyBreakIsOneOfTheRules() {
        SplittableRandom random = new SplittableRandom(20260302);
        for (int i = 0; i < 20_000; i++) {
            String text = scraps(random);
            assertThat(allowed(text)).as(shown(text)).containsAll(breaks(text));
        }
    }

    /** What a customer writes breaks where the rules say, all of it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Ada Fell",
                "Mary-Jane O'Neill",
                "1998-2024",
                "10/12/2024",
                "ada@tern.example",
                "Mum & Dad",
                "\u201CHello,\u201D she said",
                "(Ada) Fell",
                "Ada\u00A0Fell",
                "Ada\u2011Jane Fell",
                "wait... what",
                "100 %",
                "$100 off",
                "Ada\u2014Bob",
                "Ada \u2013 Bob",
                "#1 Dad",
                "C'est l'été !",
                "\u00AB Ada \u00BB",
                "No. 5",
                "A.B. Fell",
                "est.1999",
                "Ada\u2026Bob",
                "R2-D2",
                "-5 °C",
                "½ inch",
                "~ Ada ~",
                "x=y+z",
                "\uD83D\uDE00\uD83D\uDC15",
                "Ada \u2764\uFE0F Bob",
                "שלום עולם",
                "สวัสดีครับเพื่อน",
                "日本語、テスト。「はい」",
                "Happy Birthday! Love, Mum"
            })
    void aCustomersWordsBreakWhereTheRulesSay(String text) {
        assertThat(breaks(text)).as(shown(text)).isEqualTo(allowed(text));
    }

    /** Every letter of SpecialCasing.txt and all others of the first planes, in every case. */
    @ParameterizedTest
    @ValueSource(strings = {"", "tr", "az", "lt", "nl", "de"})
    void eachLetterHasUnicodesCapitalAndSmallLetter(String tag) {
        Locale language = Locale.forLanguageTag(tag);
        for (int c = 0x41; c < 0x1E944; c++) {
            // ICU knows letters that came to Unicode, or got a capital, after the JDK's version of it.
            boolean isKnown = Character.isLetter(c)
                    && Character.toUpperCase(c) == UCharacter.toUpperCase(c)
                    && Character.toTitleCase(c) == UCharacter.toTitleCase(c)
                    && Character.toLowerCase(c) == UCharacter.toLowerCase(c);
            if (isKnown) {
                String text = Character.toString(c) + "b\u03A3";
                same(LetterCase.UPPER, language, text, UCharacter.toUpperCase(language, text));
                same(LetterCase.LOWER, language, text, UCharacter.toLowerCase(language, text));
                if (Character.isLowerCase(c)) {
                    String small = Character.toString(c) + "b\u03C3";
                    same(LetterCase.TITLE, language, small, UCharacter.toTitleCase(language, small, null));
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "'',ada o'neill-pell 3rd",
        "'',ΣΊΣΥΦΟΣ ΑΔΆΣ",
        "'',straße",
        "'',ﬁnn ﬂora",
        "'',ǆemal ŉa",
        "'',(ada) \u201Cfell\u201D",
        "'',rock & roll",
        "'',a.b. fell",
        "'',ada/bob+cat",
        "'',JOSIAH BRANNOCK",
        "'',it\u2019s ada\u2019s",
        "nl,ijsland en ijmuiden",
        "'',ijsland",
        "tr,izmir ırmak IŞIK",
        "'',izmir",
        "lt,i\u0307\u0301 ada",
        "de,ßada",
        "'',1st 22nd 3rd",
        "'',ada_fell",
        "'',\u02BB\u014Dlelo",
        "'',ada\u2665bob"
    })
    void wordsAreTitledAsTheRulesSay(String tag, String text) {
        Locale language = Locale.forLanguageTag(tag);
        same(LetterCase.TITLE, language, text, UCharacter.toTitleCase(language, text, null));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Μάιος", "Άδα", "ρολόι", "Ιωάννης", "θεϊκός", "Αύγουστος", "προϋπόθεση", "ΐδα", "κάιρο"})
    void greekCapitalsHaveNoAccents(String text) {
        Locale greek = Locale.forLanguageTag("el");
        same(LetterCase.UPPER, greek, text, UCharacter.toUpperCase(greek, text));
    }

    private static void same(LetterCase wish, Locale language, String text, String judge) {
        assertThat(LetterCases.set(Optional.of(wish), language, text))
                .as("%s of %s in '%s'", wish, shown(text), language)
                .isEqualTo(Normalizer.normalize(judge, Normalizer.Form.NFC));
    }

    private static String scraps(SplittableRandom random) {
        StringBuilder text = new StringBuilder();
        for (int n = random.nextInt(2, 9); n > 0; n--) {
            text.append(SCRAPS[random.nextInt(SCRAPS.length)]);
        }
        return text.toString();
    }

    /** Counted in characters that are no spaces: those before a break. */
    private static SortedSet<Integer> breaks(String text) {
        TreeSet<Integer> breaks = new TreeSet<>();
        int at = 0;
        for (Breaks.Piece piece : Breaks.pieces(text)) {
            at += inked(piece.text());
            breaks.add(at);
        }
        breaks.remove(0); // before the first ink a no-break space may stand alone
        return breaks;
    }

    private static SortedSet<Integer> allowed(String text) {
        BreakIterator lines = BreakIterator.getLineInstance(Locale.ROOT);
        lines.setText(text);
        List<Integer> at = new ArrayList<>();
        for (int end = lines.next(); end != BreakIterator.DONE; end = lines.next()) {
            at.add(inked(text.substring(0, end)));
        }
        return at.stream().filter(n -> n > 0).collect(Collectors.toCollection(TreeSet::new));
    }

    private static int inked(String text) {
        return (int) text.codePoints()
                .filter(c -> !Character.isWhitespace(c) && !Character.isSpaceChar(c) && c != 0x200B && c != 0x85)
                .count();
    }

    private static String shown(String text) {
        return text.codePoints()
                .mapToObj(c -> String.format(Locale.ROOT, "%s[%04X]", Character.toString(c), c))
                .collect(Collectors.joining());
    }
}
