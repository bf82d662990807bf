package bandwright.rules.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.sample.SampleSetting;
import bandwright.rules.table.Evidence;
import bandwright.rules.units.Temperature;
import bandwright.rules.units.TemperatureUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Which temperatures and times are tried, and in which order. */
class TriesTest {
    private static final UsualRange CERAMIC = range(180, 200, 150, 240);

    private static UsualRange range(double least, double most, int leastSeconds, int mostSeconds) {
        return new UsualRange(
                Optional.of(Temperature.celsius(least)),
                Optional.of(Temperature.celsius(most)),
                OptionalInt.of(leastSeconds),
                OptionalInt.of(mostSeconds));
    }

    private static TryRange of(double usual, int seconds, UsualRange range, Evidence evidence) {
        return TryRange.of(SampleSetting.figures(Temperature.celsius(usual), seconds, range, evidence));
    }

    private static List<String> said(List<Try> tries) {
        return tries.stream()
                .map(one -> one.number() + ": "
                        + one.temperature().map(Temperature::wholeCelsius).orElse(0) + " C, " + one.seconds() + " s")
                .toList();
    }

    @Test
    void threeTemperaturesThenTwoTimesAtTheBestOfThem() {
        Tries tries = Tries.of(of(190, 180, CERAMIC, Evidence.COMMON_PRACTICE));
        assertThat(said(tries.first())).containsExactly("1: 180 C, 180 s", "2: 190 C, 180 s", "3: 200 C, 180 s");
        assertThat(said(tries.second())).containsExactly("4: 0 C, 150 s", "5: 0 C, 240 s");
        assertThat(tries.largestStep()).isEqualTo(10);
    }

    /** [J] 10 degrees and a quarter of the time to either side. */
    @Test
    void aRowThatNamesNoRangeIsTriedAroundItsOwnFigures() {
        Tries tries = Tries.of(of(185, 90, UsualRange.NOT_SAID, Evidence.MEASURED));
        assertThat(said(tries.first())).containsExactly("1: 175 C, 90 s", "2: 185 C, 90 s", "3: 195 C, 90 s");
        assertThat(said(tries.second())).containsExactly("4: 0 C, 70 s", "5: 0 C, 110 s");
    }

    @Test
    void aListingThatGivesOneFigureIsOnlyConfirmed() {
        Tries tries = Tries.of(of(185, 90, UsualRange.NOT_SAID, Evidence.SUPPLIER_LISTING));
        assertThat(tries.isOne()).isTrue();
        assertThat(said(tries.all())).containsExactly("1: 185 C, 90 s");
    }

    @Test
    void aListingThatGivesARangeOfTimesOnlyIsVariedInTimeOnly() {
        UsualRange times = new UsualRange(Optional.empty(), Optional.empty(), OptionalInt.of(60), OptionalInt.of(120));
        Tries tries = Tries.of(of(185, 60, times, Evidence.SUPPLIER_LISTING));
        assertThat(tries.variesOnlyTime()).isTrue();
        assertThat(said(tries.all())).containsExactly("1: 185 C, 60 s", "2: 185 C, 90 s", "3: 185 C, 120 s");
    }

    @Test
    void aUsualFigureAtTheEndOfItsRangeIsTriedWithTheMiddle() {
        Tries tries = Tries.of(of(180, 150, CERAMIC, Evidence.COMMON_PRACTICE));
        assertThat(said(tries.first())).containsExactly("1: 180 C, 150 s", "2: 190 C, 150 s", "3: 200 C, 150 s");
        assertThat(said(tries.second())).containsExactly("4: 0 C, 195 s", "5: 0 C, 240 s");
    }

    @ParameterizedTest
    @EnumSource
    void whateverTheRangeNothingIsTriedOutsideOfIt(TemperatureUnit unit) {
        Random random = new Random(7);
        for (int i = 0; i < 20_000; i++) {
            double[] heats = random.doubles(3, 80, 250).sorted().toArray();
            if (i % 3 == 0) {
                heats[2] = heats[0] + random.nextDouble() * 6;
                heats[1] = heats[0] + (heats[2] - heats[0]) * random.nextDouble();
            }
            int[] times = random.ints(3, 5, 1500).sorted().toArray();
            UsualRange range = range(heats[0], heats[2], times[0], times[2]);
            TryRange tried = of(heats[1], times[1], range, Evidence.SUPPLIER_LISTING);
            Tries tries = Tries.of(tried);
            double low = unit == TemperatureUnit.F ? heats[0] * 1.8 + 32 : heats[0];
            double high = unit == TemperatureUnit.F ? heats[2] * 1.8 + 32 : heats[2];
            boolean hasWholeDegree = Math.ceil(low) <= Math.floor(high);
            assertThat(tries.all()).as(range.toString()).hasSizeBetween(1, 5).allSatisfy(one -> {
                assertThat(one.seconds()).isBetween(times[0], times[2]);
                one.temperature().ifPresent(heat -> {
                    assertThat(heat.celsius()).isBetween(heats[0], heats[2]);
                    int shown = tried.whole(heat, unit);
                    if (hasWholeDegree) {
                        assertThat((double) shown).isBetween(low - 1e-6, high + 1e-6);
                    }
                });
            });
            List<String> shown = tries.first().stream()
                    .map(one -> tried.whole(one.temperature().orElseThrow(), unit) + ", " + one.seconds())
                    .toList();
            assertThat(shown).as(range.toString()).doesNotHaveDuplicates();
        }
    }

    /** All orders of up to six tries, on a machine that heats faster than it cools and starts cold. */
    @Test
    void noOtherOrderWaitsLess() {
        Random random = new Random(11);
        for (int i = 0; i < 120; i++) {
            List<Try> tries = new ArrayList<>();
            for (int n = 1 + random.nextInt(6); n > 0; n--) {
                Temperature heat = Temperature.celsius(160 + 5 * random.nextInt(9));
                tries.add(new Try(n, Optional.of(heat), 30 * (1 + random.nextInt(8))));
            }
            Collections.shuffle(tries, random);
            double heating = 5 + random.nextDouble() * 30;
            double cooling = 1 + random.nextDouble() * heating;
            double least = permutations(tries).stream()
                    .mapToDouble(order -> waiting(order, heating, cooling))
                    .min()
                    .orElseThrow();
            List<Try> chosen = Tries.ordered(tries, 1);
            assertThat(waiting(chosen, heating, cooling)).isLessThanOrEqualTo(least + 1e-9);
            assertThat(chosen.stream().map(Try::number).toList()).isSorted();
        }
    }

    /** Minutes from a cold machine to the last try, but for the pressing itself. */
    private static double waiting(List<Try> order, double heating, double cooling) {
        double minutes = 0;
        double now = 20;
        for (Try one : order) {
            double next = one.temperature().orElseThrow().celsius();
            minutes += next > now ? (next - now) / heating : (now - next) / cooling;
            now = next;
        }
        return minutes;
    }

    private static List<List<Try>> permutations(List<Try> tries) {
        if (tries.isEmpty()) {
            return List.of(List.of());
        }
        List<List<Try>> all = new ArrayList<>();
        for (int i = 0; i < tries.size(); i++) {
            List<Try> rest = new ArrayList<>(tries);
            Try first = rest.remove(i);
            for (List<Try> order : permutations(rest)) {
                List<Try> whole = new ArrayList<>(List.of(first));
                whole.addAll(order);
                all.add(whole);
            }
        }
        return all;
    }

    @ParameterizedTest
    @CsvSource({"F, 374", "C, 190"})
    void aMachineIsSetInWholeDegrees(TemperatureUnit unit, int shown) {
        TryRange range = of(190, 180, CERAMIC, Evidence.COMMON_PRACTICE);
        assertThat(range.whole(Temperature.celsius(190), unit)).isEqualTo(shown);
    }

    /** 370 F is 187.78 C: 188 C would be 370.4 F. */
    @Test
    void theOtherScaleIsNotRoundedOutOfTheListing() {
        UsualRange listing = new UsualRange(
                Optional.of(Temperature.fahrenheit(350)),
                Optional.of(Temperature.fahrenheit(370)),
                OptionalInt.empty(),
                OptionalInt.empty());
        TryRange range = TryRange.of(
                SampleSetting.figures(Temperature.fahrenheit(360), 180, listing, Evidence.SUPPLIER_LISTING));
        assertThat(range.whole(range.most(), TemperatureUnit.F)).isEqualTo(370);
        assertThat(range.whole(range.most(), TemperatureUnit.C)).isEqualTo(187);
    }
}
