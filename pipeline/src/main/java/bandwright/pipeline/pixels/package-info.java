/** What a picture looks like: its stored samples, what they mean as colour, and a small upright view in sRGB. */
@NullMarked
package bandwright.pipeline.pixels;

import org.jspecify.annotations.NullMarked;
