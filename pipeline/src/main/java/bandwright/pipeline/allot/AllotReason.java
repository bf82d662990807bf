package bandwright.pipeline.allot;

import bandwright.pipeline.held.Reason;
import bandwright.rules.orders.OrderField;
import bandwright.rules.words.Words;

/** Every way in which the shelf can hold a row. */
public sealed interface AllotReason extends Reason {
    /**
     * More pieces are asked for than blanks are there.
     *
     * @param available how many there are by the last count
     */
    record OutOfStock(String sku, int available) implements AllotReason {
        @Override
        public String code() {
            return "out-of-stock";
        }

        @Override
        public OrderField field() {
            return OrderField.SKU;
        }

        @Override
        public String message() {
            return Words.say("held.out-of-stock.message", sku, available);
        }

        @Override
        public String cure() {
            return Words.say("held.out-of-stock.cure", sku);
        }
    }
}
