package bandwright.rules.sample;

import bandwright.rules.Shop;
import bandwright.rules.orders.IncompleteOrder;
import bandwright.rules.orders.Proofs;
import bandwright.rules.paper.Cutting;
import bandwright.rules.stock.StockRule;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import bandwright.rules.units.TemperatureUnit;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/** A shop with the built-in values, but for its flag. */
public final class SampleShop {
    private SampleShop() {}

    public static Shop withFlag(Length border, Length gap, Length depth, Length height) {
        return new Shop(
                "Quillmoor",
                LengthUnit.IN,
                TemperatureUnit.F,
                Optional.empty(),
                List.of("letter"),
                "desk",
                1,
                LocalTime.of(9, 0),
                200,
                100,
                0.03,
                0.10,
                0.15,
                0.35,
                3,
                2,
                border,
                gap,
                depth,
                height,
                Cutting.SCISSORS,
                StockRule.NOTE,
                IncompleteOrder.MAKE,
                true,
                0.03,
                500,
                90,
                Proofs.COLOURED);
    }
}
