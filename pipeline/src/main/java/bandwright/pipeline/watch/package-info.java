/** A drop folder: what lands in it is taken when it has arrived whole, run, and put away. */
@NullMarked
package bandwright.pipeline.watch;

import org.jspecify.annotations.NullMarked;
