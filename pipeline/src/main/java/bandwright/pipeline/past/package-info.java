/** What a run is told of earlier ones. */
@NullMarked
package bandwright.pipeline.past;

import org.jspecify.annotations.NullMarked;
