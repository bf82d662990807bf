/** What can be said of a rulebook before an order comes in. */
@NullMarked
package bandwright.pipeline.review;

import org.jspecify.annotations.NullMarked;
