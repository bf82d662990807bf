/** One picture an order of how its pieces will look: for the buyer, and for whoever presses them. */
@NullMarked
package bandwright.pipeline.write.proofs;

import org.jspecify.annotations.NullMarked;
