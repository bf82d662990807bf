/** What was printed before, in OUTBOX/ledger.db: so that nothing is printed twice. */
@NullMarked
package bandwright.pipeline.ledger;

import org.jspecify.annotations.NullMarked;
