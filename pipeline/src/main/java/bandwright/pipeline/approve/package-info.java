/** Which orders the buyer has seen and approved, by the code of their proof. */
@NullMarked
package bandwright.pipeline.approve;

import org.jspecify.annotations.NullMarked;
