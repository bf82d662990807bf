package bandwright.pipeline.tile;

import bandwright.pipeline.load.Load;
import bandwright.pipeline.size.Unit;
import bandwright.rules.Rulebook;
import bandwright.rules.Shop;
import bandwright.rules.paper.PaperRoom;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * On which sheet every transfer lies, with as few sheets as possible.
 *
 * <p>Twenty mug wraps of 212.73 x 95.25 mm need ten sheets of letter paper, two upright on each; which of the equal
 * wraps lies where follows the order of the loads.
 */
public final class Tiling {
    private final Shop shop;

    private Tiling(Shop shop) {
        this.shop = shop;
    }

    /** Every unit of every load, each on exactly one sheet; sheets of one paper stand together. */
    public static Tiled all(List<Load> loads, Rulebook rules) {
        List<Waiting> waiting = new ArrayList<>();
        for (Load load : loads) {
            for (Unit unit : load.units()) {
                waiting.add(new Waiting(unit, load.number(), waiting.size()));
            }
        }
        return new Tiling(rules.shop()).best(waiting);
    }

    /** Tries every paper as the one that all units go on that it takes, and keeps the cheapest. */
    private Tiled best(List<Waiting> waiting) {
        Set<PaperRoom> rooms = new LinkedHashSet<>();
        waiting.forEach(unit -> rooms.addAll(unit.unit().rooms()));
        List<Tiled> tried =
                rooms.stream().map(room -> tile(byRoom(waiting, room))).toList();
        boolean byCost = rooms.stream().allMatch(room -> room.paper().cost().isPresent());
        Comparator<Tiled> bySheets =
                Comparator.comparingInt(tiled -> tiled.sheets().size());
        Comparator<Tiled> order = byCost ? Comparator.comparing(Tiling::cost).thenComparing(bySheets) : bySheets;
        // The first of equals is kept: papers are tried as wanted.
        return tried.stream().min(order).orElse(new Tiled(List.of(), 0));
    }

    private Map<PaperRoom, List<Waiting>> byRoom(List<Waiting> waiting, PaperRoom wanted) {
        Map<PaperRoom, List<Waiting>> byRoom = new LinkedHashMap<>();
        for (Waiting unit : waiting) {
            byRoom.computeIfAbsent(room(unit.unit(), wanted), room -> new ArrayList<>())
                    .add(unit);
        }
        return byRoom;
    }

    /** The wanted room if it takes the unit, else the first that does with a flag, else the first. */
    private PaperRoom room(Unit unit, PaperRoom wanted) {
        if (unit.rooms().size() == 1) {
            return unit.rooms().get(0);
        }
        if (unit.rooms().contains(wanted) && takes(unit, wanted)) {
            return wanted;
        }
        return unit.rooms().stream()
                .filter(room -> takes(unit, room))
                .findFirst()
                .orElse(unit.rooms().get(0));
    }

    private boolean takes(Unit unit, PaperRoom room) {
        return new RoomTiling(room, shop).takes(FlatPattern.of(unit.transfer()));
    }

    private Tiled tile(Map<PaperRoom, List<Waiting>> byRoom) {
        List<Sheet> sheets = new ArrayList<>();
        int atLeast = 0;
        for (Map.Entry<PaperRoom, List<Waiting>> entry : byRoom.entrySet()) {
            Tiled tiled = new RoomTiling(entry.getKey(), shop).sheets(entry.getValue());
            sheets.addAll(tiled.sheets());
            atLeast += tiled.atLeast();
        }
        return new Tiled(sheets, atLeast);
    }

    private static BigDecimal cost(Tiled tiled) {
        return tiled.sheets().stream()
                .map(sheet -> sheet.room().cost().orElseThrow())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
