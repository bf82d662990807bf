/** What is to be written on each piece of a row. */
@NullMarked
package bandwright.pipeline.match.text;

import org.jspecify.annotations.NullMarked;
