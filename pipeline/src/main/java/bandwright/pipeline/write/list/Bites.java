package bandwright.pipeline.write.list;

import bandwright.rules.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * How a block that no page can hold is parted: into stacks of at most a third of a page, between its lines. A gift
 * message of 400 lines becomes bites of 19 lines each.
 */
final class Bites {
    private static final Length BITE = Length.mm(90);

    private Bites() {}

    static List<Block> of(Block block, Faces faces, Length width) {
        List<Block> bites = new ArrayList<>();
        List<Block> bite = new ArrayList<>();
        Length high = Length.ZERO;
        for (Block line : lines(block, faces, width)) {
            Length more = line.height(faces, width);
            if (!bite.isEmpty() && high.plus(more).longerThan(BITE)) {
                bites.add(new Stack(bite));
                bite.clear();
                high = Length.ZERO;
            }
            bite.add(line);
            high = high.plus(more);
        }
        bites.add(new Stack(bite));
        return bites;
    }

    /** The smallest parts: a stack's blocks, and a text's lines where it is higher than a bite itself. */
    private static List<Block> lines(Block block, Faces faces, Length width) {
        List<Block> parts = block.parts(faces, width);
        boolean isStack = block instanceof Stack;
        boolean isWhole = parts.size() < 2 || !block.height(faces, width).longerThan(BITE);
        if (isWhole && !isStack) {
            return List.of(block);
        }
        return parts.stream()
                .flatMap(part -> lines(part, faces, width).stream())
                .toList();
    }
}
