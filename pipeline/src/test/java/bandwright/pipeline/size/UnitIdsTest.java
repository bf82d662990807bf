package bandwright.pipeline.size;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.match.TestShop;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitIdsTest {
    @ParameterizedTest
    @CsvSource({
        "Q1042, 1, 2, Q1042-1-2",
        "'#1042/b', 3, 1, _1042_b-3-1",
        "Möwe 7, a.b_c, 1, M_we_7-a.b_c-1",
        "../../etc, 1, 1, .._.._etc-1-1",
    })
    void anIdIsOrderLineAndPieceInPlainCharacters(String order, String line, int piece, String id) {
        assertThat(new UnitIds(Set.of()).next(line("harbour", order, line), piece, false))
                .isEqualTo(id);
    }

    @Test
    void aCharacterOutsideTheFirstPlaneIsOneCharacter() {
        assertThat(new UnitIds(Set.of()).next(line("", "Q\uD83D\uDC26", "1"), 1, false))
                .isEqualTo("Q_-1-1");
    }

    @Test
    void aClashGetsTheSiteInFrontThenASuffix() {
        UnitIds ids = new UnitIds(Set.of());
        assertThat(ids.next(line("harbour", "Q1", "1"), 1, false)).isEqualTo("Q1-1-1");
        assertThat(ids.next(line("pier", "Q1", "1"), 1, false)).isEqualTo("pier-Q1-1-1");
        assertThat(ids.next(line("pier", "Q1", "1"), 1, false)).isEqualTo("pier-Q1-1-1-2");
        assertThat(ids.next(line("pier", "Q1", "1"), 1, false)).isEqualTo("pier-Q1-1-1-3");
        assertThat(ids.next(line("", "Q1", "1"), 1, false)).isEqualTo("Q1-1-1-2");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void noTwoUnitsShareAnIdHoweverNastyTheOrderNumbers(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        UnitIds ids = new UnitIds(Set.of());
        List<String> given = new ArrayList<>();
        for (int i = 0; i < 5000; i++) {
            OrderLine line = line(nasty(random), nasty(random), nasty(random));
            given.add(ids.next(line, 1 + random.nextInt(3), false));
        }
        assertThat(new HashSet<>(given)).as("seed %d", seed).hasSize(given.size());
        assertThat(String.join("", given)).as("seed %d", seed).matches("[A-Za-z0-9._-]+");
    }

    private static String nasty(SplittableRandom random) {
        StringBuilder out = new StringBuilder();
        for (int i = random.nextInt(4); i > 0; i--) {
            out.append("1-2_/ \u00E9".charAt(random.nextInt(7)));
        }
        return out.toString();
    }

    private static OrderLine line(String site, String order, String line) {
        return TestShop.line(site, order, line, "MUG", "heron", 1, "", Optional.empty());
    }
}
