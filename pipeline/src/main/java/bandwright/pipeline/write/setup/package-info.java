/** Pages on plain paper that a shop measures its blanks and printers with. */
@NullMarked
package bandwright.pipeline.write.setup;

import org.jspecify.annotations.NullMarked;
