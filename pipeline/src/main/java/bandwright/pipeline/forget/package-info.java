/** One buyer's order is forgotten: where it stands is found, what may go is deleted, what stays is said. */
@NullMarked
package bandwright.pipeline.forget;

import org.jspecify.annotations.NullMarked;
