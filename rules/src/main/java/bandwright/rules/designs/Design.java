package bandwright.rules.designs;

import bandwright.rules.units.Rgb;
import java.util.Optional;

/**
 * A picture and how it is placed: one row of designs.csv. Several rows of one name are variants of it.
 *
 * @param artwork a file's name inside the artwork folder
 * @param artwork2 the right-hand picture of a two-sided design
 * @param cropCentreX percent of the artwork's width from its left edge
 * @param cropCentreY percent of the artwork's height from its upper edge
 * @param background fills the box under contain; empty = no ink
 */
public record Design(
        String name,
        String artwork,
        Optional<String> artwork2,
        Placement placement,
        Fit fit,
        double cropCentreX,
        double cropCentreY,
        Optional<Rgb> background,
        String note) {

    /** What a row gets that names a picture in the artwork folder instead of a design. */
    public static Design ofArtwork(String file) {
        return new Design(file, file, Optional.empty(), Placement.ALL_ROUND, Fit.COVER, 50, 50, Optional.empty(), "");
    }
}
