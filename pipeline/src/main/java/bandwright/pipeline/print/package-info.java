/** Finished sheets to the system's print queues, once and unscaled. */
@NullMarked
package bandwright.pipeline.print;

import org.jspecify.annotations.NullMarked;
