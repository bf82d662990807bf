package bandwright.pipeline.match;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.rules.designs.Design;
import java.util.List;

/**
 * A design and the pictures that it places: its own, or the one that came with the order.
 *
 * @param artworks the left one first; one that is placed twice stands here once
 */
record Picked(Design design, List<ArtworkFile> artworks) {
    Picked {
        artworks = List.copyOf(artworks);
    }

    Picked(Design design, ArtworkFile artwork) {
        this(design, List.of(artwork));
    }
}
