/** What of the orders is still to make, after what was printed before and what another file of the inbox says too. */
@NullMarked
package bandwright.pipeline.owed;

import org.jspecify.annotations.NullMarked;
