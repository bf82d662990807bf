package bandwright.pipeline.write.sheets;

import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.tile.Sheet;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The paper of a sheet that is thrown away: inside the margins, outside every cut line and flag, and no nearer to a
 * picture than the trim gap. Marks look for their room here, and take it.
 */
final class Waste {
    private final Box inside;
    private final List<Box> taken = new ArrayList<>();
    /** What is kept free round each unit's picture. */
    private final Map<String, List<Box>> pictures = new TreeMap<>();

    Waste(Box inside) {
        this.inside = inside;
    }

    static Waste of(Sheet sheet, Length border, Length gap) {
        Waste waste = new Waste(sheet.room().inside());
        for (Placed placed : sheet.placed()) {
            List<Box> kept = placed.covers().stream()
                    .map(box -> box.grown(border.atLeast(gap)))
                    .toList();
            waste.pictures.put(placed.unit().id(), kept);
            kept.forEach(waste::take);
            placed.flag().ifPresent(waste::take);
        }
        return waste;
    }

    void take(Box box) {
        taken.add(box);
    }

    boolean isFree(Box box) {
        return inside.contains(box) && taken.stream().noneMatch(box::overlaps);
    }

    /** Whether nothing else is in the way of a mark that keeps the gap from its own picture. */
    boolean isFreeBeside(Placed own, Box box) {
        List<Box> picture = pictures.getOrDefault(own.unit().id(), List.of());
        return inside.contains(box)
                && taken.stream().noneMatch(other -> other.overlaps(box) && !picture.contains(other));
    }

    Box inside() {
        return inside;
    }

    /** The lowest, then leftmost free place of that size. */
    Optional<Box> find(Length width, Length height) {
        Length highest = inside.top().minus(height);
        List<Length> heights = new ArrayList<>(List.of(inside.y()));
        taken.stream().map(Box::top).forEach(heights::add);
        return heights.stream()
                .filter(y -> y.compareTo(inside.y()) >= 0 && y.compareTo(highest) <= 0)
                .distinct()
                .sorted()
                .flatMap(y -> leftmost(y, width, height).stream())
                .findFirst();
    }

    private Optional<Box> leftmost(Length y, Length width, Length height) {
        Box row = new Box(inside.x(), y, inside.width(), height);
        List<Box> inTheWay = taken.stream()
                .filter(row::overlaps)
                .sorted(Comparator.comparing(Box::x))
                .toList();
        Length x = inside.x();
        for (Box box : inTheWay) {
            if (x.plus(width).compareTo(box.x()) <= 0) {
                break;
            }
            x = x.atLeast(box.right());
        }
        return x.plus(width).longerThan(inside.right()) ? Optional.empty() : Optional.of(new Box(x, y, width, height));
    }
}
