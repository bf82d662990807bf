package bandwright.pipeline.write.proofs;

import bandwright.pipeline.Run;
import bandwright.pipeline.approve.ProofCode;
import bandwright.pipeline.rows.PlainName;
import bandwright.pipeline.rows.Row;
import bandwright.pipeline.rows.ShelfOrder;
import bandwright.pipeline.size.Unit;
import bandwright.rules.Rulebook;
import bandwright.rules.colour.SeenBase;
import bandwright.rules.orders.Proofs;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * An order that gets a proof.
 *
 * @param file in the run's folder: proofs/Q1042.png
 * @param units its pieces, made and waiting, in the order of their rows
 */
public record ProofOrder(String file, String site, String order, List<Unit> units) {
    public ProofOrder {
        units = List.copyOf(units);
    }

    private record Key(String site, String order) {}

    /** The orders of a run that get one, in the order of their rows. What is made for the shelf has no buyer. */
    public static List<ProofOrder> of(Run run, Rulebook rules) {
        Proofs wanted = rules.shop().proofs();
        Set<String> waiting = new HashSet<>();
        run.waiting().forEach(unit -> waiting.add(unit.id()));
        List<Unit> all = new ArrayList<>(run.units());
        all.addAll(run.waiting());
        all.sort(Comparator.comparing(unit -> unit.matched().line().row().from()));
        Map<Key, List<Unit>> orders = new LinkedHashMap<>();
        for (Unit unit : all) {
            Key key =
                    new Key(unit.matched().line().site(), unit.matched().line().order());
            if (!ShelfOrder.is(key.order())) {
                orders.computeIfAbsent(key, any -> new ArrayList<>()).add(unit);
            }
        }
        List<ProofOrder> made = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        orders.forEach((key, units) -> {
            boolean isWanted =
                    switch (wanted) {
                        case ALL -> true;
                        case NONE -> false;
                        case COLOURED ->
                            units.stream().anyMatch(unit -> waiting.contains(unit.id()) || isColoured(unit));
                    };
            if (isWanted) {
                made.add(new ProofOrder(file(key, taken), key.site(), key.order(), units));
            }
        });
        return made;
    }

    private static boolean isColoured(Unit unit) {
        return SeenBase.of(unit.matched().blank()).stream().anyMatch(base -> !base.isWhite());
    }

    /** The codes of the rows whose buyers are asked, by the ids of their units. */
    static Map<String, String> codes(Run run) {
        IdentityHashMap<Row, List<Unit>> rows = new IdentityHashMap<>();
        List<Unit> all = new ArrayList<>(run.units());
        all.addAll(run.waiting());
        for (Unit unit : all) {
            if (unit.matched().line().approved().isPresent()) {
                rows.computeIfAbsent(unit.matched().line().row(), any -> new ArrayList<>())
                        .add(unit);
            }
        }
        Map<String, String> codes = new HashMap<>();
        rows.values().forEach(row -> {
            String code = ProofCode.of(row).text();
            row.forEach(unit -> codes.put(unit.id(), code));
        });
        return codes;
    }

    /** A name that any system takes; two orders never share one. */
    private static String file(Key key, Set<String> taken) {
        String plain = PlainName.file(key.order());
        String name = plain;
        if (taken.contains(name.toLowerCase(Locale.ROOT)) && !key.site().isEmpty()) {
            name = PlainName.file(key.site()) + "-" + plain;
        }
        for (int i = 2; !taken.add(name.toLowerCase(Locale.ROOT)); i++) {
            name = plain + "-" + i;
        }
        return "proofs/" + name + ".png";
    }
}
