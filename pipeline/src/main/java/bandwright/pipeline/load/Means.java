package bandwright.pipeline.load;

import bandwright.rules.Rulebook;
import bandwright.rules.Shop;
import bandwright.rules.heat.Circuit;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.table.Names;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a day has at hand.
 *
 * @param machines of each heat source
 * @param today what ships by then is wanted when parcels are fetched
 */
record Means(Shop shop, List<Circuit> circuits, Map<HeatSource, Integer> machines, int people, LocalDate today) {
    Means {
        circuits = List.copyOf(circuits);
        machines = Map.copyOf(machines);
    }

    static Means of(Rulebook rules, LocalDate today) {
        Map<HeatSource, Integer> machines = new LinkedHashMap<>();
        rules.heatSources().list().forEach(source -> machines.put(source, source.machines()));
        return new Means(rules.shop(), rules.circuits(), machines, rules.shop().people(), today);
    }

    Means withOneMore(HeatSource source) {
        Map<HeatSource, Integer> more = new LinkedHashMap<>(machines);
        more.merge(source, 1, Integer::sum);
        return new Means(shop, circuits, more, people, today);
    }

    Means withOneMorePerson() {
        return new Means(shop, circuits, machines, people + 1, today);
    }

    int circuitOf(HeatSource source) {
        for (int i = 0; i < circuits.size(); i++) {
            if (source.watts() > 0 && Names.same(circuits.get(i).id(), source.circuit())) {
                return i;
            }
        }
        return Work.Bank.NO_CIRCUIT;
    }

    /** Those that are not over when the day begins. */
    List<Span> breaks() {
        List<Span> breaks = new ArrayList<>();
        shop.breaks().stream()
                .filter(one -> shop.secondsTo(one.to()) > 0)
                .forEach(one -> breaks.add(new Span(shop.secondsTo(one.from()), shop.secondsTo(one.to()))));
        return breaks;
    }

    long collection() {
        return shop.collection().map(shop::secondsTo).orElse(Long.MAX_VALUE);
    }
}
