package bandwright.pipeline.size;

import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.List;

/**
 * What is printed for one unit, upright as seen on the blank: width is along the wall, height up the wall. Two units of
 * equal transfers share one drawing in a file.
 */
public record Transfer(Length width, Length height, List<Layer> layers) {
    public Transfer {
        layers = List.copyOf(layers);
    }

    public Box box() {
        return Box.of(width, height);
    }
}
