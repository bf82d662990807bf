package bandwright.pipeline.write.slips;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.write.papers.SmallMonday;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The slips of a weekend with 200 orders: each once, in the order in which the boxes must leave. */
final class ManySlipsTest {
    private static final long SEED = 20260302;
    private static final List<String> BLANKS = List.of("MUG-11-W", "STEIN-16-F", "COAST-S", "TUM-20-W");

    @TempDir
    Path folder;

    private record Order(int number, int day, String blank, int count) {
        String row() {
            // Without a ship-by date an order sorts last.
            String shipBy = day == 9 ? "" : "2026-03-0" + day;
            return "Q" + number + "," + shipBy + "," + blank + ",lamp," + count + "\n";
        }
    }

    @Test
    void twoHundredOrdersGetASlipEachByShipByThenByNumber() throws IOException {
        SplittableRandom random = new SplittableRandom(SEED);
        List<Order> orders = new ArrayList<>();
        for (int number = 1; number <= 200; number++) {
            String blank = BLANKS.get(random.nextInt(BLANKS.size()));
            orders.add(new Order(number, List.of(4, 5, 9).get(random.nextInt(3)), blank, random.nextInt(1, 3)));
        }
        List<Order> shuffled = new ArrayList<>(orders);
        Collections.shuffle(shuffled, new Random(SEED));
        StringBuilder csv = new StringBuilder("Order,Ship By,SKU,Design,Qty\n");
        shuffled.forEach(order -> csv.append(order.row()));

        List<String> pages = new SmallMonday(folder).pages(PackingSlips::new, csv.toString());

        orders.sort(Comparator.comparingInt(Order::day).thenComparingInt(Order::number));
        assertThat(pages).as("seed " + SEED).hasSize(200);
        for (int i = 0; i < 200; i++) {
            Order order = orders.get(i);
            assertThat(pages.get(i))
                    .startsWith("Order Q" + order.number + " COMPLETE")
                    .contains(order.count + " x " + order.blank + " ", "page " + (i + 1) + " of 200");
        }
    }
}
