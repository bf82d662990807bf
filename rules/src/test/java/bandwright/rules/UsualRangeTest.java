package bandwright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.heat.HeatKind;
import bandwright.rules.heat.UsualRange;
import bandwright.rules.units.Temperature;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The figures that a press setting stands between. */
class UsualRangeTest {
    private static final String HEAD =
            "material,heat_kind,temperature,time,allowed,least_temperature,most_temperature,least_time,most_time";

    @TempDir
    Path folder;

    private SmallTables own() {
        return new SmallTables(folder);
    }

    @Test
    void theEndsAreReadAsTheyAreWritten() throws Exception {
        Rulebook rules = own().with(
                        "press-settings.csv",
                        HEAD,
                        "ceramic,mug press,190 C,3 min,yes,356 F,,150 s,4 min",
                        "ceramic,oven,190 C,3 min,yes,190 C,374 F,3 min,180 s")
                .read();
        UsualRange range = rules.pressSettings()
                .find(rules.blanks().find("KEEPER-11").orElseThrow(), HeatKind.MUG_PRESS)
                .orElseThrow()
                .range();
        assertThat(range.leastTemperature().map(Temperature::wholeCelsius)).contains(180);
        assertThat(range.mostTemperature()).isEqualTo(Optional.empty());
        assertThat(range.leastSeconds()).isEqualTo(OptionalInt.of(150));
        assertThat(range.mostSeconds()).isEqualTo(OptionalInt.of(240));
    }

    @Test
    void aFigureOutsideOfItsOwnRangeIsAFault() throws Exception {
        own().with(
                        "press-settings.csv",
                        HEAD,
                        "metal,oven,190 C,3 min,yes,195 C,,,2 min",
                        "glass,oven,190 C,3 min,yes,,180 C,200 s,");
        assertThat(own().faultLines())
                .satisfiesExactly(
                        line -> assertThat(line)
                                .contains(
                                        "row 2, column least_temperature",
                                        "It is more than temperature, which is 190 C"),
                        line -> assertThat(line).contains("row 2, column most_time", "It is less than time"),
                        line -> assertThat(line).contains("row 3, column least_time", "It is more than time"),
                        line -> assertThat(line)
                                .contains("row 3, column most_temperature", "It is less than temperature"));
    }
}
