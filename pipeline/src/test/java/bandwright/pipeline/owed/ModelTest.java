package bandwright.pipeline.owed;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.Run;
import bandwright.pipeline.size.Unit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Random weeks against a model of a few lines: orders grow, are exported again and again in overlapping files, and pieces
 * are spoiled. In the end every piece that is wanted was made exactly once, and once more for each that was spoiled.
 */
final class ModelTest {
    private static final List<String> BLANKS = List.of("MUG-11-W", "MUG-15-W", "MUG-20-W");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void everyWantedPieceIsMadeOnceAndItsRemakes(long seed) throws Exception {
        SplittableRandom random = new SplittableRandom(seed);
        Weeks weeks = new Weeks(folder);
        Map<String, Integer> wanted = new LinkedHashMap<>();
        Map<String, Integer> made = new LinkedHashMap<>();
        Map<String, Integer> spoiled = new LinkedHashMap<>();
        Set<String> ids = new HashSet<>();
        for (int week = 0; week < 6; week++) {
            for (int i = 0; i < 4; i++) {
                wanted.merge("Q" + random.nextInt(5) + "," + BLANKS.get(random.nextInt(3)), 1, Integer::sum);
            }
            Run run = weeks.run("a.csv", export(wanted), "b.csv", export(wanted));
            assertThat(run.held()).as("seed %d", seed).isEmpty();
            List<Unit> units = new ArrayList<>(run.units());
            for (Unit unit : units) {
                assertThat(ids.add(unit.id()))
                        .as("seed %d, %s", seed, unit.id())
                        .isTrue();
                made.merge(key(unit), 1, Integer::sum);
            }
            if (!units.isEmpty() && random.nextInt(2) == 0) {
                Unit ruined = units.get(random.nextInt(units.size()));
                weeks.spoil(ruined.id());
                spoiled.merge(key(ruined), 1, Integer::sum);
            }
        }
        weeks.run("a.csv", export(wanted)).units().forEach(unit -> made.merge(key(unit), 1, Integer::sum));

        Map<String, Integer> expected = new LinkedHashMap<>(wanted);
        spoiled.forEach((key, count) -> expected.merge(key, count, Integer::sum));
        assertThat(made).as("seed %d", seed).isEqualTo(expected);
        assertThat(weeks.run("a.csv", export(wanted)).units()).isEmpty();
    }

    private static String export(Map<String, Integer> wanted) {
        StringBuilder text = new StringBuilder("Order,SKU,Design,Qty\n");
        wanted.forEach(
                (key, count) -> text.append(key).append(",tern,").append(count).append('\n'));
        return text.toString();
    }

    private static String key(Unit unit) {
        return unit.matched().line().order() + "," + unit.matched().blank().sku();
    }
}
