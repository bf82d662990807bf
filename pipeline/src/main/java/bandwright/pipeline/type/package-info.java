/** Names and other words, set as outlines as large as their box allows. */
@NullMarked
package bandwright.pipeline.type;

import org.jspecify.annotations.NullMarked;
