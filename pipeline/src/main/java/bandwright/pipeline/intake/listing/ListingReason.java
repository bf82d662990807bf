package bandwright.pipeline.intake.listing;

import bandwright.pipeline.held.Reason;
import bandwright.rules.orders.OrderField;
import bandwright.rules.orders.Product;
import bandwright.rules.table.Quoted;
import bandwright.rules.words.Words;
import java.util.Optional;

/** Every way in which products.csv can leave open what a row orders. */
public sealed interface ListingReason extends Reason {
    @Override
    default OrderField field() {
        return OrderField.PRODUCT;
    }

    /**
     * No row of products.csv fits the listing and its variation.
     *
     * @param row the very row to add
     */
    record ProductUnknown(String product, String variation, Optional<Product> nearest, String row)
            implements ListingReason {
        @Override
        public String code() {
            return "product-unknown";
        }

        @Override
        public String message() {
            String name = Quoted.text(product);
            return variation.isBlank()
                    ? Words.say("held.product-unknown.message", name)
                    : Words.say("held.product-unknown.variation.message", name, Quoted.text(variation));
        }

        @Override
        public String cure() {
            String add = Words.say("held.product-unknown.cure", row);
            return nearest.map(near -> Words.say("held.product-unknown.near", shown(near), near.row()) + " " + add)
                    .orElse(add);
        }

        private static String shown(Product product) {
            StringBuilder words = new StringBuilder(Quoted.text(product.product()));
            product.variation().forEach((key, value) -> words.append(", ").append(Quoted.text(key + "=" + value)));
            return words.toString();
        }
    }

    /** Two rows of products.csv fit equally well. */
    record ProductTie(String product, int firstRow, int secondRow) implements ListingReason {
        static ProductTie of(String product, int one, int other) {
            return new ProductTie(product, Math.min(one, other), Math.max(one, other));
        }

        @Override
        public String code() {
            return "product-tie";
        }

        @Override
        public String message() {
            return Words.say("held.product-tie.message", firstRow, secondRow, Quoted.text(product));
        }

        @Override
        public String cure() {
            return Words.say("held.product-tie.cure", firstRow, secondRow);
        }
    }
}
