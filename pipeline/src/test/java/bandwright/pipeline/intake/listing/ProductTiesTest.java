package bandwright.pipeline.intake.listing;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.orders.Product;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProductTiesTest {
    @ParameterizedTest
    @CsvSource({
        // one row after the other, site:Key=Value|Key=Value
        "':Size=15 oz', ':Handle=Pink', '', true",
        "':Size=15 oz', ':Size=11 oz', '', false", // no order has both sizes
        "':Size=15 oz', ':', '', false", // one is more specific
        "':Size=15 oz', ':Size=15 oz', '', false", // equal keys are a set
        "':Size=15 oz', ':Handle=Pink', ':Size=15 oz|Handle=Pink', false", // a third settles it
        "':Size=15 oz', ':Handle=Pink', ':Size=11 oz|Handle=Pink', true", // not that one
        "'fair:', ':Size=15 oz', '', true", // a site is a condition, too
        "'fair:', 'web:', '', false",
        "'fair:Size=15 oz', 'web:Handle=Pink', '', false",
        "':SIZE= 15 OZ', ':Handle=Pink', '', true",
    })
    void rowsTieIfAnOrderCouldFitBothEqually(String one, String other, String third, boolean isTie) {
        List<Product> products = new ArrayList<>();
        for (String row : new String[] {one, other, third}) {
            if (!row.isEmpty()) {
                products.add(product(row, products.size() + 2));
            }
        }
        assertThat(ProductTies.of(products).stream()
                        .anyMatch(tie -> tie.one().row() == 2 && tie.other().row() == 3))
                .isEqualTo(isTie);
    }

    private static Product product(String text, int row) {
        String[] parts = text.split(":", -1);
        SortedMap<String, String> pairs = new TreeMap<>();
        for (String pair : parts[1].split("\\|", -1)) {
            if (!pair.isEmpty()) {
                pairs.put(pair.split("=", -1)[0].strip(), pair.split("=", -1)[1].strip());
            }
        }
        return new Product(parts[0], "Tern mug", pairs, "MUG-11-W", "tern", 1, new TreeMap<>(), "", row);
    }
}
