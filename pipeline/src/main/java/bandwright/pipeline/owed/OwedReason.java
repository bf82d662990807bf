package bandwright.pipeline.owed;

import bandwright.pipeline.held.Reason;
import bandwright.rules.orders.OrderField;
import bandwright.rules.words.Words;
import java.util.List;

/** Every way in which what was printed or stated elsewhere can hold a row. */
public sealed interface OwedReason extends Reason {
    /** Two files say different things of one order. */
    record StatedDifferently(String one, String other) implements OwedReason {
        @Override
        public String code() {
            return "order-stated-differently";
        }

        @Override
        public OrderField field() {
            return OrderField.ORDER;
        }

        @Override
        public String message() {
            return Words.say("held.order-stated-differently.message", one, other);
        }

        @Override
        public String cure() {
            return Words.say("held.order-stated-differently.cure");
        }
    }

    /**
     * The order was printed otherwise.
     *
     * @param printed units and what they are
     * @param wanted what the row says now
     */
    record ChangedAfterPrinting(List<String> printed, String wanted, OrderField field) implements OwedReason {
        public ChangedAfterPrinting {
            printed = List.copyOf(printed);
        }

        @Override
        public String code() {
            return "changed-after-printing";
        }

        @Override
        public String message() {
            return Words.say("held.changed-after-printing.message", String.join("; ", printed), wanted);
        }

        @Override
        public String cure() {
            return Words.say("held.changed-after-printing.cure");
        }
    }
}
