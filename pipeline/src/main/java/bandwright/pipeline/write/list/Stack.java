package bandwright.pipeline.write.list;

import bandwright.rules.units.Length;
import java.util.List;

/** Blocks one under the other, kept on one page where they fit one. */
public record Stack(List<Block> blocks) implements Block {
    public Stack {
        blocks = List.copyOf(blocks);
    }

    public static Stack of(Block... blocks) {
        return new Stack(List.of(blocks));
    }

    @Override
    public Length height(Faces faces, Length width) {
        return blocks.stream().map(block -> block.height(faces, width)).reduce(Length.ZERO, Length::plus);
    }

    @Override
    public void draw(Pen pen, Length x, Length top, Length width) {
        Length y = top;
        for (Block block : blocks) {
            block.draw(pen, x, y, width);
            y = y.minus(block.height(pen.faces(), width));
        }
    }

    @Override
    public Length firstBaseline(Faces faces, Length width) {
        return blocks.isEmpty() ? Length.ZERO : blocks.get(0).firstBaseline(faces, width);
    }

    @Override
    public List<Block> parts(Faces faces, Length width) {
        return blocks;
    }
}
