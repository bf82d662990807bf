package bandwright.pipeline.past;

import bandwright.rules.spoilage.Spoilage;
import bandwright.rules.table.Names;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * What a shop's own pieces have taught it: how many of each blank were made with each heat source and setting, how many
 * of them were spoiled, and why. A piece counts as good until somebody says that it is spoiled.
 */
public record Experience(List<Alike> made) {
    public static final Experience NONE = new Experience(List.of());

    /**
     * Pieces that were made alike and turned out alike.
     *
     * @param source the id of the heat source; empty for pieces of a ledger that didn't keep it yet
     * @param heating empty for such pieces, too
     * @param spoiledWhy as it was typed; empty for good ones
     */
    public record Alike(
            String sku, String source, Optional<Heating> heating, Optional<String> spoiledWhy, int pieces) {}

    public Experience {
        made = List.copyOf(made);
    }

    /** Of a blank, in whatever heat source, also those of which it isn't known. */
    public Turnout made(String sku) {
        return count(alike -> alike.sku().equals(sku));
    }

    /** Of a blank in one heat source. */
    public Turnout made(String sku, String source) {
        return count(alike -> isOf(alike, sku, source));
    }

    /** Of a blank in one heat source with one setting. */
    public Turnout madeWith(String sku, String source, Heating heating) {
        return count(alike -> isOf(alike, sku, source)
                && alike.heating().filter(heating::equals).isPresent());
    }

    /** How many of a blank are spoiled in one heat source, as far as the shop's own pieces tell. */
    public Spoilage spoilage(String sku, String source, double shopRate) {
        Turnout turnout = made(sku, source);
        return new Spoilage(shopRate, turnout.pieces(), turnout.spoiled());
    }

    /** The ids of the heat sources in which that blank was made. */
    public List<String> listSources(String sku) {
        return List.copyOf(new TreeSet<>(made.stream()
                .filter(alike -> alike.sku().equals(sku) && !alike.source().isEmpty())
                .map(Alike::source)
                .toList()));
    }

    /** The settings with which that blank was made in that heat source, the gentlest first. */
    public List<Heating> listHeatings(String sku, String source) {
        return List.copyOf(new TreeSet<>(made.stream()
                .filter(alike -> isOf(alike, sku, source))
                .flatMap(alike -> alike.heating().stream())
                .toList()));
    }

    private static boolean isOf(Alike alike, String sku, String source) {
        return alike.sku().equals(sku) && alike.source().equals(source);
    }

    private Turnout count(Predicate<Alike> counts) {
        List<Alike> counted = made.stream().filter(counts).toList();
        int all = counted.stream().mapToInt(Alike::pieces).sum();
        List<Turnout.Why> reasons = reasons(counted);
        return new Turnout(all, reasons.stream().mapToInt(Turnout.Why::pieces).sum(), reasons);
    }

    /** "Ghosted" and "ghosted " are one reason, in the spelling that was typed most often. */
    private static List<Turnout.Why> reasons(List<Alike> counted) {
        Map<String, Map<String, Integer>> spellings = new TreeMap<>();
        for (Alike alike : counted) {
            alike.spoiledWhy().ifPresent(why -> spellings
                    .computeIfAbsent(Names.fold(why), key -> new TreeMap<>())
                    .merge(why.strip(), alike.pieces(), Integer::sum));
        }
        List<Turnout.Why> reasons = new ArrayList<>();
        for (Map<String, Integer> spelling : spellings.values()) {
            int pieces = spelling.values().stream().mapToInt(Integer::intValue).sum();
            String usual = spelling.entrySet().stream()
                    .min(Map.Entry.<String, Integer>comparingByValue(Comparator.reverseOrder())
                            .thenComparing(Map.Entry.comparingByKey()))
                    .orElseThrow()
                    .getKey();
            reasons.add(new Turnout.Why(usual, pieces));
        }
        reasons.sort(Comparator.comparing(Turnout.Why::pieces).reversed().thenComparing(Turnout.Why::reason));
        return reasons;
    }
}
