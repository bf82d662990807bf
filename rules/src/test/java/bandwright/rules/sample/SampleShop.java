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

/** A shop with the built-in values, but for what the test says. */
public final class SampleShop {
    private SampleShop() {}

    public static Shop withFlag(Length border, Length gap, Length depth, Length height) {
        return shop(List.of("letter"), "desk", border, gap, depth, height);
    }

    /** Whose papers and printer have those ids. */
    public static Shop withPapers(List<String> papers, String printer) {
        return shop(papers, printer, Length.mm(2), Length.mm(4), Length.mm(14), Length.mm(30));
    }

    private static Shop shop(
            List<String> papers, String printer, Length border, Length gap, Length depth, Length height) {
        return new Shop(
                "Quillmoor",
                LengthUnit.IN,
                TemperatureUnit.F,
                Optional.empty(),
                papers,
                printer,
                1,
                LocalTime.of(9, 0),
                List.of(),
                Optional.empty(),
                false,
                200,
                100,
                360,
                0.03,
                0.10,
                0.15,
                0.35,
                3,
                2,
                5,
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
