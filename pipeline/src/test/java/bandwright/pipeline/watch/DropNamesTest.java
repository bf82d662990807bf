package bandwright.pipeline.watch;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names that come and go by themselves. From memory of what browsers, office programs and sync clients do. */
final class DropNamesTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "orders.csv.part",
                "orders.xlsx.crdownload",
                "Unconfirmed 4711.crdownload",
                "orders.csv.PART",
                "orders.tmp",
                "~$orders.xlsx",
                ".~lock.orders.ods#",
                ".orders.csv.x7Gh2",
                ".sync-x7.db",
                "orders.csv~",
                "#orders.csv#",
                "orders.csv.filepart",
                "orders.csv.!ab",
                "Thumbs.db",
                "desktop.ini",
                ".DS_Store"
            })
    void namesOfTheMomentAreNoDrops(String name) {
        assertThat(DropNames.isPassing(Path.of(name))).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "orders.csv",
                "part.csv",
                "tmp.xlsx",
                "orders (2).csv",
                "orders - conflicted copy.csv",
                "Bestellungen März.ods",
                "12345678.csv",
                "20260302",
                "a\nb.csv"
            })
    void namesOfOrdersAre(String name) {
        assertThat(DropNames.isPassing(Path.of(name))).isFalse();
    }

    @Test
    void aWorkbookThatIsSavedThisMomentWaits() {
        assertThat(DropNames.isHalfSaved("5D2F1000")).isTrue();
        assertThat(DropNames.isHalfSaved("5D2F1000.csv")).isFalse();
    }

    @Test
    void aNeighbourSaysThatAFileIsOnItsWayOrOpen() {
        assertThat(DropNames.isArriving("Orders.csv", Set.of("orders.csv", "orders.csv.part")))
                .isTrue();
        assertThat(DropNames.isArriving("orders.csv", Set.of("other.csv.part"))).isFalse();
        assertThat(DropNames.isBeingEdited("orders.xlsx", Set.of("~$orders.xlsx")))
                .isTrue();
        assertThat(DropNames.isBeingEdited("weekend-orders.xlsx", Set.of("~$ekend-orders.xlsx")))
                .isTrue();
        assertThat(DropNames.isBeingEdited("orders.ods", Set.of(".~lock.orders.ods#")))
                .isTrue();
        assertThat(DropNames.isBeingEdited("orders.ods", Set.of("~$others.ods")))
                .isFalse();
    }
}
