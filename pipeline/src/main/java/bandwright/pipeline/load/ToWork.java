package bandwright.pipeline.load;

import bandwright.pipeline.load.Work.Bank;
import bandwright.pipeline.load.Work.Chain;
import bandwright.pipeline.load.Work.Link;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.size.Urgency;
import bandwright.rules.heat.Circuit;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.heat.Rest;
import bandwright.rules.units.Temperature;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Puts a day's series of loads, and what the day has at hand, into plain numbers. */
final class ToWork {
    /** A plan tells so many ship-by dates apart; of more the last ones are one. */
    private static final int MOST_DATES = 8;

    private final List<HeatSource> sources;
    private final Means means;
    private final Map<LocalDate, Integer> dates = new HashMap<>();
    private final Map<String, Integer> turns = new HashMap<>();

    private ToWork(List<Series> series, Means means) {
        this.means = means;
        this.sources = sources(series);
        List<Unit> units = series.stream()
                .flatMap(one -> one.batches().stream())
                .flatMap(batch -> batch.units().stream())
                .sorted(Urgency.OF_UNIT)
                .toList();
        for (Unit unit : units) {
            turns.put(unit.id(), turns.size());
            dates.putIfAbsent(Urgency.shipBy(unit), Math.min(dates.size(), MOST_DATES - 1));
        }
    }

    static Work of(List<Series> series, Means means) {
        ToWork to = new ToWork(series, means);
        return new Work(
                to.sources.stream().map(to::bank).toList(),
                series.stream().map(to::chain).toList(),
                means.circuits().stream().map(Circuit::mostWatts).toList(),
                means.people(),
                means.breaks(),
                Math.min(to.dates.size(), MOST_DATES),
                means.collection());
    }

    /** The heat sources of a day's banks, in the order in which series first need them. */
    static List<HeatSource> sources(List<Series> series) {
        return series.stream().map(Series::source).distinct().toList();
    }

    private Bank bank(HeatSource source) {
        return new Bank(
                means.machines().getOrDefault(source, 1),
                source.warmUpSeconds(),
                source.rates(),
                source.watts(),
                means.circuitOf(source));
    }

    private Chain chain(Series series) {
        Temperature heat = Temperature.celsius(series.likeness().celsius());
        List<Link> links = new ArrayList<>();
        series.batches().forEach(batch -> links.add(link(batch)));
        return new Chain(sources.indexOf(series.source()), heat, series.hands(), series.cycleSeconds(), links);
    }

    private Link link(Batch batch) {
        List<Unit> units = batch.units();
        long dateBits = 0;
        for (Unit unit : units) {
            dateBits |= 1L << dates.getOrDefault(Urgency.shipBy(unit), 0);
        }
        List<Unit> due = units.stream()
                .filter(unit -> !Urgency.shipBy(unit).isAfter(means.today()))
                .toList();
        long rest = due.stream().mapToLong(ToWork::restSeconds).max().orElse(0);
        int turn = units.stream()
                .mapToInt(unit -> turns.getOrDefault(unit.id(), 0))
                .min()
                .orElse(0);
        return new Link(turn, dateBits, due.size(), rest, batch.waitsFor(), lookSeconds(batch));
    }

    /** The first pieces that it waits for are of the same blanks and settings as its own. */
    private static long lookSeconds(Batch batch) {
        return batch.waitsFor() < 0
                ? 0
                : batch.units().stream()
                        .map(unit -> unit.matched().setting())
                        .mapToLong(setting -> Rest.untilPeeled(setting.peel(), setting.rest()))
                        .max()
                        .orElse(0);
    }

    private static long restSeconds(Unit unit) {
        return Rest.seconds(unit.matched().setting().rest()).orElse(0);
    }
}
