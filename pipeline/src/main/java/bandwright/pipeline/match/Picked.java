package bandwright.pipeline.match;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.rules.designs.Design;

/** A design and the picture that it places: its own, or the one that came with the order. */
record Picked(Design design, ArtworkFile artwork) {}
