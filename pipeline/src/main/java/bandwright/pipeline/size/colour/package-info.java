/** What a transfer will look like on its blank, by the forecast: how far its colours shift, how its letters stand out. */
@NullMarked
package bandwright.pipeline.size.colour;

import org.jspecify.annotations.NullMarked;
