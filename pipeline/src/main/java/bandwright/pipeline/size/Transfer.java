package bandwright.pipeline.size;

import bandwright.rules.blanks.Sector;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * What is printed for one unit, upright as seen on the blank: width is along the wall, height up the wall. Two units of
 * equal transfers share one drawing in a file.
 *
 * @param layers in the flat band, also on a cone
 * @param sector how the flat band is bent for a cone; empty where it is printed straight
 */
public record Transfer(Length width, Length height, List<Layer> layers, Optional<Sector> sector) {
    public Transfer {
        layers = List.copyOf(layers);
    }

    /** A transfer that is printed straight. */
    public Transfer(Length width, Length height, List<Layer> layers) {
        this(width, height, layers, Optional.empty());
    }

    /** The band that the layers lie in. */
    public Box flat() {
        return Box.of(width, height);
    }

    /** What it takes upright on a paper: a cone's picture the box of its sector. */
    public Box box() {
        return sector.map(Sector::box).orElse(flat());
    }
}
