package bandwright.pipeline.intake;

import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.SkippedRow;
import bandwright.pipeline.rows.Row;
import bandwright.rules.Shop;
import bandwright.rules.orders.OrderField;
import bandwright.rules.orders.Site;
import bandwright.rules.orders.YesWords;
import bandwright.rules.words.Words;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Turns one filled row into an order line, or says why not. A cancelled order is skipped whatever else is wrong with
 * its row; of several faults the first in this order is named: a damaged number, the order, the quantity, the dates,
 * what this program doesn't make yet.
 */
final class RowReading {
    private final SiteList sites;
    private final Shop shop;

    RowReading(SiteList sites, Shop shop) {
        this.sites = sites;
        this.shop = shop;
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
        int pieces = values.quantity().orElse(0);
        if (sites.isSkipped(values.site(), values.text(OrderField.STATUS))) {
            String message = Words.say("intake.cancelled", values.text(OrderField.STATUS));
            return new Piles.Read.Skipped(new SkippedRow(values.row(), order, pieces, "cancelled", message));
        }
        Optional<IntakeReason> reason = values.findFault();
        if (reason.isPresent()) {
            return new Piles.Read.Held(new HeldRow(values.row(), order, pieces, reason.get()));
        }
        return new Piles.Read.Line(line(values, site, line));
    }

    private static OrderLine line(RowValues values, String site, String counted) {
        String own = values.text(OrderField.LINE);
        return new OrderLine(
                values.row(),
                site,
                values.order(),
                own.isEmpty() ? counted : own,
                values.date(OrderField.ORDER_DATE).day(),
                values.date(OrderField.SHIP_BY).day(),
                values.text(OrderField.SKU),
                values.text(OrderField.DESIGN),
                values.quantity().orElseThrow(),
                texts(values),
                values.text(OrderField.HEAT_SOURCE),
                YesWords.has(values.text(OrderField.GIFT)));
    }

    private static SortedMap<String, String> texts(RowValues values) {
        SortedMap<String, String> texts = new TreeMap<>();
        for (OrderField field : values.row().header().fields()) {
            if (field.isText() && !values.text(field).isEmpty()) {
                texts.put(field.textField(), values.text(field));
            }
        }
        return Collections.unmodifiableSortedMap(texts);
    }
}
