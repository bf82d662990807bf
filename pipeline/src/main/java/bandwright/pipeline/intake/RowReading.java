package bandwright.pipeline.intake;

import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.Outcome;
import bandwright.pipeline.held.SkippedRow;
import bandwright.pipeline.intake.listing.Item;
import bandwright.pipeline.intake.listing.Listings;
import bandwright.pipeline.rows.Row;
import bandwright.rules.Rulebook;
import bandwright.rules.Shop;
import bandwright.rules.orders.OrderField;
import bandwright.rules.orders.Site;
import bandwright.rules.orders.YesWords;
import bandwright.rules.words.Words;
import java.util.List;
import java.util.Optional;

/**
 * Turns one filled row into an order line, or says why not. A cancelled order is skipped whatever else is wrong with
 * its row; of several faults the first in this order is named: a damaged number, the order, the quantity, the dates,
 * the listing.
 */
final class RowReading {
    private final SiteList sites;
    private final Shop shop;
    private final Listings listings;

    RowReading(SiteList sites, Rulebook rules) {
        this.sites = sites;
        this.shop = rules.shop();
        this.listings = new Listings(rules);
    }

    Piles.Read read(Row row, Site fileSite, LineNumbers numbers) {
        String siteCell = row.cell(OrderField.SITE).text().strip();
        Optional<Site> ownSite = siteCell.isEmpty() ? Optional.empty() : sites.findByName(siteCell);
        Site site = ownSite.orElse(fileSite);
        RowValues values = new RowValues(row, site, shop.maxQuantity());
        String siteName = siteCell.isEmpty() || ownSite.isPresent() ? site.name() : siteCell;
        return read(values, siteName, numbers);
    }

    private Piles.Read read(RowValues values, String site, LineNumbers numbers) {
        String order = values.order();
        // Counted before anything is held or skipped, so that mending one row renames no other.
        String line = Integer.toString(numbers.next(site, order));
        int copies = values.quantity().orElse(0);
        if (sites.isSkipped(values.site(), values.text(OrderField.STATUS))) {
            String message = Words.say("intake.cancelled", values.text(OrderField.STATUS));
            return Piles.Read.skipped(new SkippedRow(values.row(), order, copies, SkippedRow.CANCELLED, message));
        }
        Optional<IntakeReason> fault = values.findFault();
        if (fault.isPresent()) {
            return Piles.Read.held(new HeldRow(values.row(), order, copies, fault.get()));
        }
        Outcome<List<Item>> items = listings.items(values.asked(site));
        if (items instanceof Outcome.Held<List<Item>> held) {
            return Piles.Read.held(new HeldRow(values.row(), order, copies, held.reason()));
        }
        return read(line(values, site, line, ((Outcome.Made<List<Item>>) items).value()));
    }

    private static Piles.Read read(OrderLine line) {
        Optional<SkippedRow> skipped = notDrinkware(line);
        if (line.pieces() == 0) {
            return new Piles.Read(Optional.empty(), Optional.empty(), skipped);
        }
        return new Piles.Read(Optional.of(line), Optional.empty(), skipped);
    }

    /** Those of its pieces that are a booklet or a tea towel. */
    private static Optional<SkippedRow> notDrinkware(OrderLine line) {
        Optional<Item> first =
                line.items().stream().filter(item -> !item.isDrinkware()).findFirst();
        return first.map(item -> new SkippedRow(
                line.row(),
                line.order(),
                line.ordered() - line.pieces(),
                SkippedRow.NOT_DRINKWARE,
                Words.say("intake.not-drinkware", item.productRow())));
    }

    private static OrderLine line(RowValues values, String site, String counted, List<Item> items) {
        String own = values.text(OrderField.LINE);
        return new OrderLine(
                values.row(),
                site,
                values.order(),
                own.isEmpty() ? counted : own,
                values.date(OrderField.ORDER_DATE).day(),
                values.date(OrderField.SHIP_BY).day(),
                values.quantity().orElseThrow(),
                items,
                values.wording(),
                values.text(OrderField.HEAT_SOURCE),
                YesWords.has(values.text(OrderField.GIFT)),
                values.approved());
    }
}
