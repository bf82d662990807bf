package bandwright.pipeline.past;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.units.Temperature;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class ExperienceTest {
    @Test
    void aReasonIsOneHoweverItIsSpelt() {
        Experience known = new Experience(List.of(
                alike(Optional.empty(), 90),
                alike(Optional.of("Ghosted"), 1),
                alike(Optional.of("ghosted "), 3),
                alike(Optional.of("dropped"), 2),
                alike(Optional.of("too  pale"), 2)));
        assertThat(known.made("MUG", "clamp"))
                .isEqualTo(new Turnout(
                        98,
                        8,
                        List.of(
                                new Turnout.Why("ghosted", 4),
                                new Turnout.Why("dropped", 2),
                                new Turnout.Why("too  pale", 2))));
    }

    @Test
    void aSettingIsOneHoweverItsRowIsWritten() {
        assertThat(new Heating(Temperature.fahrenheit(385), 180, "Medium"))
                .isEqualTo(new Heating(Temperature.celsius(196.1), 180, " medium"))
                .isNotEqualTo(new Heating(Temperature.fahrenheit(386), 180, "medium"))
                .isNotEqualTo(new Heating(Temperature.fahrenheit(385), 181, "medium"));
    }

    @Test
    void whatWasNeverMadeTaughtNothing() {
        assertThat(Experience.NONE.made("MUG", "clamp")).isEqualTo(new Turnout(0, 0, List.of()));
        assertThat(Experience.NONE.listSources("MUG")).isEmpty();
    }

    private static Experience.Alike alike(Optional<String> why, int pieces) {
        Heating heating = new Heating(Temperature.celsius(190), 180, "medium");
        return new Experience.Alike("MUG", "clamp", Optional.of(heating), why, pieces);
    }
}
