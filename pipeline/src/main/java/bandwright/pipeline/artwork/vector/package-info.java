/** Artwork that is drawn from shapes: SVG and PDF, read within limits, with nothing fetched and nothing executed. */
@NullMarked
package bandwright.pipeline.artwork.vector;

import org.jspecify.annotations.NullMarked;
