/** Which pieces get the blanks that are on the shelf. */
@NullMarked
package bandwright.pipeline.allot;

import org.jspecify.annotations.NullMarked;
