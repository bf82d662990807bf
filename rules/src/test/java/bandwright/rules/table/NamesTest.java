package bandwright.rules.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NamesTest {
    @ParameterizedTest
    @CsvSource(
            ignoreLeadingAndTrailingWhitespace = false,
            value = {
                "' Mug   11 ',mug 11",
                "'MUG\u00A011\t',mug 11",
                "'mug\r\n11',mug 11",
                "ÉCLAIR,éclair",
                "Straße,STRASSE",
                "ΝΑΥΣ,ναυσ",
                "ναυς,ΝΑΥΣ",
                "'',' '",
            })
    void namesThatReadAlikeAreAlike(String one, String other) {
        assertThat(Names.same(one, other)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"mug 11, mug11", "mug-11, mug 11", "tern, terns", "resume, résumé"})
    void namesThatReadDifferentlyAreNot(String one, String other) {
        assertThat(Names.same(one, other)).isFalse();
    }

    @Test
    void anAccentIsOneWhetherItIsOneCharacterOrTwo() {
        // Some computers write the names of files in the decomposed form of Unicode Standard Annex 15.
        assertThat(Names.same("caf\u00E9.png", "cafe\u0301.png")).isTrue();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void foldingTwiceChangesNothingMore(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 2000; round++) {
            StringBuilder name = new StringBuilder();
            for (int i = random.nextInt(0, 8); i >= 0; i--) {
                name.append((char) random.nextInt(1, 0x0600));
            }
            String folded = Names.fold(name.toString());
            assertThat(Names.fold(folded))
                    .as("seed %s: %s", seed, name.chars().boxed().toList())
                    .isEqualTo(folded);
        }
    }
}
