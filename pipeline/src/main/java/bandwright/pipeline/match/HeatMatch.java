package bandwright.pipeline.match;

import bandwright.pipeline.held.Outcome;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blank;
import bandwright.rules.heat.HeatChoice;
import bandwright.rules.heat.HeatChoice.Chosen;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.table.Names;
import bandwright.rules.table.Nearest;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The heat source that presses a row's blank: the row's own wish or nothing, else the first that takes the blank. Asked
 * once for each blank and wish, however many rows name them.
 */
final class HeatMatch {
    private final Rulebook rules;
    private final Map<Asked, Outcome<Chosen>> answers = new HashMap<>();

    HeatMatch(Rulebook rules) {
        this.rules = rules;
    }

    private record Asked(String sku, String wish) {}

    Outcome<Chosen> forRow(Blank blank, String wish) {
        return answers.computeIfAbsent(
                new Asked(blank.sku(), Names.fold(wish)),
                asked -> asked.wish().isEmpty() ? any(blank) : wished(blank, wish));
    }

    private Outcome<Chosen> any(Blank blank) {
        HeatChoice choice =
                HeatChoice.among(HeatChoice.candidates(blank, rules.heatSources()), blank, rules.pressSettings());
        return choice.chosen()
                .map(Outcome::made)
                .orElseGet(() -> Outcome.held(new MatchReason.NoHeatSource(blank, choice.refusals())));
    }

    private Outcome<Chosen> wished(Blank blank, String wish) {
        Optional<HeatSource> source = named(wish);
        if (source.isEmpty()) {
            return Outcome.held(unknown(wish));
        }
        HeatChoice choice = HeatChoice.among(List.of(source.get()), blank, rules.pressSettings());
        return choice.chosen()
                .map(Outcome::made)
                .orElseGet(() -> Outcome.held(new MatchReason.HeatSourceRefused(
                        blank, choice.refusals().get(0))));
    }

    /** By id first, then by name. */
    private Optional<HeatSource> named(String wish) {
        return rules.heatSources().find(wish).or(() -> rules.heatSources().list().stream()
                .filter(source -> Names.same(source.name(), wish))
                .findFirst());
    }

    private MatchReason unknown(String wish) {
        List<HeatSource> sources = rules.heatSources().list();
        List<String> ids = sources.stream().map(HeatSource::id).toList();
        List<String> names = Stream.concat(ids.stream(), sources.stream().map(HeatSource::name))
                .toList();
        return new MatchReason.HeatSourceUnknown(wish, Nearest.of(wish, names), ids);
    }
}
