package bandwright.pipeline.tile;

import bandwright.rules.Shop;
import bandwright.rules.paper.Cutting;
import bandwright.rules.paper.PaperRoom;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Lays units on the sheets of one room. */
record RoomTiling(PaperRoom room, Shop shop) {
    /** Whether the room takes a picture of that shape with its flag. */
    boolean takes(FlatPattern pattern) {
        List<Pose> poses = Pose.of(pattern, law());
        return !poses.isEmpty() && poses.get(0).flagged() == law().hasFlag();
    }

    private PoseLaw law() {
        return PoseLaw.of(room, shop);
    }

    /**
     * @param units in load order
     */
    Tiled sheets(List<Waiting> units) {
        Map<FlatPattern, List<Waiting>> byPattern = new LinkedHashMap<>();
        for (Waiting unit : units) {
            byPattern
                    .computeIfAbsent(FlatPattern.of(unit.unit().transfer()), pattern -> new ArrayList<>())
                    .add(unit);
        }
        List<Kind> kinds = new ArrayList<>();
        byPattern.forEach((pattern, alike) -> kinds.add(new Kind(pattern, Pose.of(pattern, law()), alike.size())));
        boolean edgeToEdge = shop.cutting() == Cutting.TRIMMER;
        Job job = new Job(law().fieldWidth(), law().fieldHeight(), kinds, edgeToEdge, new Nesting(law().gap()));
        int atLeast = Bound.sheets(job);
        Plan plan = Search.best(job, atLeast);
        Dealing dealing = new Dealing(room, job, law(), List.copyOf(byPattern.values()));
        if (room.paper().isRoll()) {
            return new Tiled(new RollCut(law(), shop, job).pages(plan, dealing), atLeast);
        }
        return new Tiled(dealing.sheets(plan), atLeast);
    }
}
