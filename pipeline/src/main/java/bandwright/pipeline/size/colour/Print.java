package bandwright.pipeline.size.colour;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.pixels.Sight;
import bandwright.pipeline.size.Layer;
import bandwright.rules.units.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What is printed where, letters aside: the pictures as cropped and placed, over their backgrounds. Asked for a place on a
 * sky it says the sky's blue, beside the picture white, which is no ink.
 */
public final class Print {
    private final List<Part> parts;

    private Print(List<Part> parts) {
        this.parts = List.copyOf(parts);
    }

    /** Of layers in the order in which they are printed; empty if one of the pictures can't be looked at. */
    public static Optional<Print> of(List<Layer> layers, Function<ArtworkFile, Optional<Sight>> sights) {
        List<Part> parts = new ArrayList<>();
        for (Layer layer : layers) {
            if (layer instanceof Layer.Picture picture) {
                Optional<Sight> sight = sights.apply(picture.artwork());
                if (sight.isEmpty()) {
                    return Optional.empty();
                }
                parts.add(Part.Seen.of(sight.get(), picture.place(), picture.clip()));
            } else if (layer instanceof Layer.Fill fill) {
                parts.add(new Part.Flat(fill.box(), fill.colour()));
            }
        }
        return Optional.of(new Print(parts));
    }

    /** What is printed at a place in mm, as on white; 0xFFRRGGBB. */
    int at(double x, double y) {
        int printed = Part.NO_INK;
        for (Part part : parts) {
            printed = part.over(x, y, printed);
        }
        return printed;
    }

    /** All its colours and how much of each there is. */
    Palette palette() {
        Palette.Counting counting = new Palette.Counting();
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i) instanceof Part.Seen picture) {
                picture.count(ground(i, picture), counting);
            } else if (parts.get(i) instanceof Part.Flat flat) {
                counting.add(flat.colour(), area(flat.box()) - covered(i, flat));
            }
        }
        return counting.palette();
    }

    /** What lies under a picture: the last background before it that it stands on, else white. */
    private int ground(int number, Part.Seen picture) {
        int ground = Part.NO_INK;
        for (Part part : parts.subList(0, number)) {
            boolean isUnder = part instanceof Part.Flat flat && flat.box().contains(picture.shown());
            ground = isUnder ? ((Part.Flat) part).packed() : ground;
        }
        return ground;
    }

    /** How much of a background the pictures after it cover. */
    private double covered(int number, Part.Flat flat) {
        return parts.subList(number + 1, parts.size()).stream()
                .filter(Part.Seen.class::isInstance)
                .mapToDouble(part -> area(((Part.Seen) part).shown().shared(flat.box())))
                .sum();
    }

    private static double area(Box box) {
        return box.width().mm() * box.height().mm();
    }
}
