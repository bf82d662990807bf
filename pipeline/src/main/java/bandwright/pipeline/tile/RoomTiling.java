package bandwright.pipeline.tile;

import bandwright.rules.Shop;
import bandwright.rules.paper.Cutting;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Lays units on the sheets of one room. */
record RoomTiling(PaperRoom room, Shop shop) {
    /** Whether the room takes a picture of that size with its flag. */
    boolean takes(Box picture) {
        List<Pose> poses = Pose.of(picture.width(), picture.height(), law());
        return !poses.isEmpty() && poses.get(0).flagged() == law().hasFlag();
    }

    private PoseLaw law() {
        return PoseLaw.of(room, shop);
    }

    /**
     * @param units in load order
     */
    Tiled sheets(List<Waiting> units) {
        Map<Box, List<Waiting>> bySize = new LinkedHashMap<>();
        for (Waiting unit : units) {
            bySize.computeIfAbsent(unit.unit().transfer().box(), size -> new ArrayList<>())
                    .add(unit);
        }
        List<Kind> kinds = new ArrayList<>();
        bySize.forEach((size, alike) -> kinds.add(
                new Kind(size.width(), size.height(), Pose.of(size.width(), size.height(), law()), alike.size())));
        boolean edgeToEdge = shop.cutting() == Cutting.TRIMMER;
        Job job = new Job(law().fieldWidth(), law().fieldHeight(), kinds, edgeToEdge);
        int atLeast = Bound.sheets(job);
        Plan plan = Search.best(job, atLeast);
        Dealing dealing = new Dealing(room, job, law(), List.copyOf(bySize.values()));
        return new Tiled(dealing.sheets(plan), atLeast);
    }
}
