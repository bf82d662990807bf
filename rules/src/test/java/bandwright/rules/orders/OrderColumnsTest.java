package bandwright.rules.orders;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OrderColumnsTest {
    private final OrderColumns columns = new OrderColumns(List.of(
            new OrderColumn("", OrderField.ORDER, "Order #"),
            new OrderColumn("", OrderField.NOTE, "Remarks"),
            new OrderColumn("Harbour Fair", OrderField.SKU, "Remarks"),
            new OrderColumn("", OrderField.text("name"), "Name on it")));

    @ParameterizedTest
    @ValueSource(strings = {"Order #", "order", " ORDER. ", "Or-der:"})
    void caseAndPunctuationAndSpacesOfAHeaderDontCount(String header) {
        assertThat(columns.find("", header)).contains(OrderField.ORDER);
    }

    @Test
    void aSitesOwnHeaderGoesBeforeEverybodys() {
        assertThat(columns.find("harbour fair", "Remarks")).contains(OrderField.SKU);
        assertThat(columns.find("Another", "Remarks")).contains(OrderField.NOTE);
        assertThat(columns.find("harbour fair", "Order")).contains(OrderField.ORDER);
    }

    @Test
    void aTextHeaderNamesItsFieldWithoutARow() {
        assertThat(columns.find("", "Text: Second  Name")).contains(OrderField.text("second name"));
        assertThat(columns.find("", "TEXT :year")).contains(OrderField.text("year"));
        assertThat(columns.find("", "Name on it")).contains(OrderField.text("name"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "#", "Text:", "Text: ", "Ordered"})
    void otherHeadersNameNothing(String header) {
        assertThat(columns.find("", header)).isEmpty();
    }
}
