package bandwright.rules.table;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.heat.Covering;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NearestTest {
    private static final List<String> SHELF =
            List.of("storm-lamp.png", "tern.jpg", "choir.png", "MUG-11-W", "MUG-15-W");

    @ParameterizedTest
    @CsvSource({
        "storm-lmap.png, storm-lamp.png",
        "stormlamp.png, storm-lamp.png",
        "tren.jpg, tern.jpg",
        "tern.jpeg, tern.jpg",
        "Chior.PNG, choir.png",
        "mug-15, MUG-15-W",
        "MUG-14-W, MUG-11-W",
    })
    void theNameThatWasProbablyMeant(String asked, String meant) {
        assertThat(Nearest.of(asked, SHELF)).contains(meant);
    }

    @ParameterizedTest
    @ValueSource(strings = {"lighthouse.png", "", " ", "TUMBLER-20", "xyz"})
    void nothingIsOfferedWhereNothingIsNear(String asked) {
        assertThat(Nearest.of(asked, SHELF)).isEmpty();
        assertThat(Nearest.of(asked, List.of())).isEmpty();
    }

    @Test
    void anEmptyCellMeansNothing() {
        assertThat(Nearest.of(" ", List.of("x"))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        // Damerau 1964: one letter wrong, missing, too many, or two neighbours swapped is one edit
        "lamp, lamp, 0",
        "lamp, limp, 1",
        "lamp, lap, 1",
        "lamp, clamp, 1",
        "lamp, lapm, 1",
        "tern, ternes, 2",
        "ca, abc, 3",
        "kitten, sitting, 3",
    })
    void editsAreCounted(String one, String other, int edits) {
        assertThat(Nearest.distance(one, other, 9)).isEqualTo(edits);
        assertThat(Nearest.distance(other, one, 9)).isEqualTo(edits);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void oneSlipIsAlwaysForgiven(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 200; round++) {
            String name = SHELF.get(random.nextInt(SHELF.size()));
            int at = random.nextInt(name.length());
            String slip = name.substring(0, at) + name.substring(at + 1);
            assertThat(Nearest.of(slip, List.of(name)))
                    .as("seed %s: %s", seed, slip)
                    .contains(name);
        }
    }

    @Test
    void aClosedListReadsAsASentence() {
        assertThat(Nearest.listed(List.of(Covering.values()))).isEqualTo("protective paper, shrink sleeve, none");
    }
}
