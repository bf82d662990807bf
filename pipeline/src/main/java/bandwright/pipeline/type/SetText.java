package bandwright.pipeline.type;

import bandwright.rules.units.Box;
import bandwright.rules.units.Length;

/**
 * A text as it is set.
 *
 * @param ink the box of what is inked, within the field's box
 * @param size the type size
 * @param thinnest about how wide its thin strokes are
 */
public record SetText(Outline outline, Box ink, Length size, Length thinnest) {}
