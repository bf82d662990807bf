package bandwright.rules;

import bandwright.rules.day.Break;
import bandwright.rules.orders.IncompleteOrder;
import bandwright.rules.orders.Proofs;
import bandwright.rules.paper.Cutting;
import bandwright.rules.stock.StockRule;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import bandwright.rules.units.TemperatureUnit;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * The keys of shop.csv. Shares are fractions of one: 3 % is 0.03.
 *
 * @param timeZone empty = the computer's
 * @param papers ids; the first of papers.csv where the key is empty
 * @param warpPpi pixels an inch of a picture that is computed anew for a cone, at most
 * @param printer an id; the first of printers.csv where the key is empty
 * @param collection when parcels are fetched; empty = not asked about
 * @param firstAlone whether the first piece of a blank that is new here or not confirmed is pressed before its batch
 */
public record Shop(
        String name,
        LengthUnit unit,
        TemperatureUnit temperatureUnit,
        Optional<ZoneId> timeZone,
        List<String> papers,
        String printer,
        int people,
        LocalTime dayStarts,
        List<Break> breaks,
        Optional<LocalTime> collection,
        boolean firstAlone,
        double ppiNote,
        double ppiHold,
        double warpPpi,
        double stretchNote,
        double stretchHold,
        double cropNote,
        double cropHold,
        double contrastNote,
        double contrastHold,
        double colourNote,
        Length trimBorder,
        Length trimGap,
        Length flagDepth,
        Length flagHeight,
        Cutting cutting,
        StockRule stock,
        IncompleteOrder incompleteOrder,
        boolean artworkByName,
        double spoilRate,
        int maxQuantity,
        int keepBuyerDays,
        Proofs proofs) {
    public Shop {
        papers = List.copyOf(papers);
        breaks = List.copyOf(breaks);
    }

    /** Seconds from the start of the day's work to a time of that day; less than 0 before it. */
    public long secondsTo(LocalTime time) {
        return time.toSecondOfDay() - (long) dayStarts.toSecondOfDay();
    }
}
