package bandwright.pipeline.watch;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** When a run begins, and with what. */
final class GatheringTest {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static final Pace SOON = new Pace(Duration.ofSeconds(5), Duration.ofSeconds(30), Optional.empty());
    private static final Pace MORNING =
            new Pace(Duration.ofSeconds(5), Duration.ofSeconds(30), Optional.of(LocalTime.of(7, 30)));

    @Test
    void whatLandsTogetherBecomesOneRun() {
        Sighting first = ready("a.csv", "2026-03-02T09:00:00Z", "2026-03-02T09:00:31Z");
        Sighting second = ready("b.csv", "2026-03-02T09:00:20Z", "2026-03-02T09:00:31Z");
        assertThat(due(SOON, "2026-03-02T09:00:31Z", first, second))
                .as("eleven seconds after the second")
                .isEmpty();
        assertThat(due(SOON, "2026-03-02T09:00:50Z", first, second)).containsExactly(first, second);
    }

    @Test
    void aFileThatGrowsHoldsTheOthersUpForAWhileOnly() {
        Sighting whole = ready("a.csv", "2026-03-02T09:00:00Z", "2026-03-02T09:05:00Z");
        Sighting growing = ready("b.csv", "2026-03-02T09:04:58Z", "2026-03-02T09:05:00Z");
        assertThat(due(SOON, "2026-03-02T09:05:00Z", whole, growing)).isEmpty();

        Sighting later = ready("a.csv", "2026-03-02T09:00:00Z", "2026-03-02T09:10:00Z");
        Sighting still = ready("b.csv", "2026-03-02T09:09:58Z", "2026-03-02T09:10:00Z");
        assertThat(due(SOON, "2026-03-02T09:10:00Z", later, still)).containsExactly(later);
    }

    @Test
    void aCopyThatIsCutShortHoldsNothingUp() {
        Sighting whole = ready("a.csv", "2026-03-02T09:00:00Z", "2026-03-02T09:00:40Z");
        Look look = new Look(Instant.parse("2026-03-02T09:00:35Z"), 9, 0, 1, Seen.CUT_SHORT, List.of());
        Look last = new Look(Instant.parse("2026-03-02T09:00:40Z"), 9, 0, 1, Seen.CUT_SHORT, List.of());
        Sighting cut = new Sighting(Path.of("b.xlsx"), look.at(), look, last);
        assertThat(due(SOON, "2026-03-02T09:00:40Z", whole, cut)).containsExactly(whole);
    }

    @Test
    void atATimeOfDayGoesWhatLandedBeforeIt() {
        Sighting evening = ready("a.csv", "2026-03-01T20:00:00Z", "2026-03-02T07:29:59Z");
        assertThat(due(MORNING, "2026-03-02T07:29:59Z", evening)).isEmpty();
        assertThat(due(MORNING, "2026-03-02T07:30:00Z", evening)).containsExactly(evening);

        Sighting late = ready("b.csv", "2026-03-02T07:30:01Z", "2026-03-02T12:00:00Z");
        assertThat(due(MORNING, "2026-03-02T12:00:00Z", late)).isEmpty();
        assertThat(due(MORNING, "2026-03-03T07:30:00Z", late)).containsExactly(late);
    }

    @Test
    void theTimeOfDayIsTheShops() {
        Sighting evening = ready("a.csv", "2026-06-01T20:00:00Z", "2026-06-02T06:30:00Z");
        assertThat(due(MORNING, "2026-06-02T06:29:59Z", evening)).isEmpty();
        assertThat(due(MORNING, "2026-06-02T06:30:00Z", evening))
                .as("summer time: 07:30 in London")
                .containsExactly(evening);
    }

    @Test
    void aComputerThatSleptThroughTheTimeMakesUpForIt() {
        Sighting evening = ready("a.csv", "2026-03-01T20:00:00Z", "2026-03-02T10:00:00Z");
        assertThat(due(MORNING, "2026-03-02T10:00:00Z", evening)).containsExactly(evening);
    }

    @Test
    void whatLayThereBeforeTheStartIsAsOldAsItsTime() {
        Look look = new Look(
                Instant.parse("2026-03-02T08:00:00Z"),
                9,
                Instant.parse("2026-03-01T18:00:00Z").toEpochMilli(),
                1,
                Seen.ARRIVING,
                List.of());
        var looks = new TreeMap<>(Map.of(Path.of("a.csv"), look));
        Sighting first = only(Sighting.next(Map.of(), looks, true));
        assertThat(first.arrived()).isEqualTo("2026-03-01T18:00:00Z");
        assertThat(only(Sighting.next(Map.of(), looks, false)).arrived())
                .as("dropped while somebody looks, however old it is")
                .isEqualTo("2026-03-02T08:00:00Z");
    }

    @Test
    void aClockThatIsSetBackBeginsTheLooksAnew() {
        Look late = new Look(Instant.parse("2026-03-02T09:00:00Z"), 9, 0, 1, Seen.WHOLE, List.of());
        Look early = new Look(Instant.parse("2026-03-02T08:00:00Z"), 9, 0, 1, Seen.WHOLE, List.of());
        Path file = Path.of("a.csv");
        Sighting known = new Sighting(file, late.at(), late, late);
        Sighting next = only(Sighting.next(Map.of(file, known), new TreeMap<>(Map.of(file, early)), false));
        assertThat(next.first()).isEqualTo(early);
    }

    private static Sighting only(Map<Path, Sighting> sightings) {
        return sightings.values().iterator().next();
    }

    private static List<Sighting> due(Pace pace, String now, Sighting... all) {
        return Gathering.due(List.of(all), Instant.parse(now), pace, LONDON);
    }

    /** Steady since it came. */
    private static Sighting ready(String name, String since, String now) {
        Look first = new Look(Instant.parse(since), 9, 0, 1, Seen.ARRIVING, List.of());
        Look last = new Look(Instant.parse(now), 9, 0, 1, Seen.WHOLE, List.of());
        return new Sighting(Path.of(name), first.at(), first, last);
    }
}
