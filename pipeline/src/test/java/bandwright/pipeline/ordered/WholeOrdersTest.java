package bandwright.pipeline.ordered;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.Conservation;
import bandwright.pipeline.Run;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.shop.Stall;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the rows of an order have to do with each other. */
final class WholeOrdersTest {
    private static final String ORDERS = "Order,SKU,Design,Qty,Site";

    @TempDir
    private Path folder;

    private Stall stall = new Stall(Path.of(""));

    @BeforeEach
    void open() throws IOException {
        stall = new Stall(folder);
        stall.orders(
                "fair.csv",
                ORDERS,
                "Q1,MUG-11-W,tern,2,Fair",
                "Q1,MUGG,tern,1,Fair",
                "Q1,MUG-15-W,tern,1,Harbour",
                "Q2,MUG-11-W,lamp,1,Fair",
                "STOCK,MUG-11-W,lamp,1,Fair",
                "STOCK,MUGG,lamp,1,Fair");
    }

    @Test
    void soundRowsAreMadeAlthoughOthersOfTheOrderAreHeld() throws Exception {
        assertThat(stall.story())
                .containsExactly(
                        "made Q1-1-1 MUG-11-W tern",
                        "made Q1-1-2 MUG-11-W tern",
                        "made Harbour-Q1-1-1 MUG-15-W tern",
                        "made Q2-1-1 MUG-11-W lamp",
                        "made STOCK-1-1 MUG-11-W lamp",
                        "held Q1 x1 blank-unknown",
                        "held STOCK x1 blank-unknown");
    }

    @Test
    void aShopThatWaitsHoldsThemUntilTheOrderIsWhole() throws Exception {
        stall.table("shop.csv", "key,value", "incomplete_order,wait");
        Run run = stall.run();
        assertThat(Stall.story(run))
                .containsExactly(
                        "made Harbour-Q1-1-1 MUG-15-W tern",
                        "made Q2-1-1 MUG-11-W lamp",
                        "made STOCK-1-1 MUG-11-W lamp",
                        "held Q1 x2 order-incomplete",
                        "held Q1 x1 blank-unknown",
                        "held STOCK x1 blank-unknown");
        HeldRow waiting = run.held().get(0);
        assertThat(waiting.reason().message()).contains("fair.csv, row 3 (blank-unknown)");
        assertThat(waiting.ask()).isEmpty();
        assertThat(Conservation.check(run)).isEmpty();
    }

    @Test
    void anOrderWithNothingHeldDoesNotWait() throws Exception {
        stall.table("shop.csv", "key,value", "incomplete_order,wait");
        stall.orders("fair.csv", ORDERS, "Q1,MUG-11-W,tern,2,Fair", "Q1,MUG-15-W,tern,1,Fair");
        assertThat(stall.run().held()).isEmpty();
    }
}
