package bandwright.pipeline.write.slips;

import bandwright.pipeline.RowFate;
import bandwright.pipeline.Run;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.SkippedRow;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.Output;
import bandwright.pipeline.write.list.Block;
import bandwright.pipeline.write.list.Framed;
import bandwright.pipeline.write.list.Gap;
import bandwright.pipeline.write.list.ListPaper;
import bandwright.pipeline.write.list.Pages;
import bandwright.pipeline.write.list.Picture;
import bandwright.pipeline.write.list.Row;
import bandwright.pipeline.write.list.Stack;
import bandwright.pipeline.write.list.Style;
import bandwright.pipeline.write.list.Text;
import bandwright.pipeline.write.list.Tick;
import bandwright.pipeline.write.thumb.Thumbnails;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blank;
import bandwright.rules.orders.OrderField;
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What goes into each box and to whom: packing-slips.pdf, one slip an order. */
public final class PackingSlips implements Output {
    /** The name in the run's folder. */
    public static final String FILE = "packing-slips.pdf";

    private static final Length TICK = Length.mm(8);
    private static final Length COUNT = Length.mm(18);
    private static final Length PICTURE = Length.mm(46);
    private static final Length PICTURE_HIGH = Length.mm(22);
    private static final Length PRICE = Length.mm(26);

    private final Thumbnails thumbnails;

    public PackingSlips(Thumbnails thumbnails) {
        this.thumbnails = thumbnails;
    }

    @Override
    public List<OutFile> files(Run run, Rulebook rules) {
        List<Slip> slips = Slip.of(run, rules.sites());
        if (slips.isEmpty()) {
            return List.of();
        }
        return List.of(new OutFile(FILE, out -> write(run, slips, rules, out)));
    }

    private void write(Run run, List<Slip> slips, Rulebook rules, OutputStream out) throws IOException {
        try (Pages pages = new Pages(
                run.id(),
                FILE,
                Words.say("slips.title"),
                rules.shop().name(),
                ListPaper.of(rules.shop().unit()))) {
            for (Slip slip : slips) {
                pages.page(Words.say("slips.order", slip.order()));
                head(pages, slip);
                pieces(pages, slip);
                before(pages, slip);
                missing(pages, slip);
                last(pages, slip);
            }
            pages.writeTo(out);
        }
    }

    private static void head(Pages pages, Slip slip) {
        Length half = pages.measure().half();
        String state = Words.say(slip.isComplete() ? "slips.complete" : "slips.not-complete");
        pages.add(Row.plain(
                List.of(half, half),
                List.of(
                        Text.of(Words.say("slips.order", slip.order()), Style.TITLE),
                        Text.right(state, Style.HEADING))));
        pages.add(Gap.mm(6));
        List<Block> address = new ArrayList<>();
        slip.address().forEach(line -> address.add(Text.of(line, Style.ADDRESS)));
        pages.add(Row.plain(List.of(half, half), List.of(new Stack(address), facts(slip))));
        pages.add(Gap.mm(6));
        if (slip.isGift()) {
            gift(pages, slip);
        }
    }

    private static Block facts(Slip slip) {
        List<Block> facts = new ArrayList<>();
        fact(facts, "slips.site", Optional.of(slip.site()).filter(site -> !site.isEmpty()));
        fact(facts, "slips.order-date", slip.orderDate());
        fact(facts, "slips.ship-by", slip.shipBy());
        fact(facts, "slips.shipping", slip.said(OrderField.SHIPPING));
        Optional<String> shipTo = slip.said(OrderField.SHIP_TO);
        fact(facts, "slips.buyer", slip.said(OrderField.BUYER).filter(buyer -> !shipTo.equals(Optional.of(buyer))));
        return new Stack(facts);
    }

    private static void fact(List<Block> facts, String key, Optional<?> what) {
        what.ifPresent(text -> facts.add(Text.of(Words.say(key, text), Style.BODY)));
    }

    private static void gift(Pages pages, Slip slip) {
        List<Block> words = new ArrayList<>(List.of(Text.of(Words.say("slips.gift"), Style.STRONG)));
        slip.said(OrderField.GIFT_MESSAGE).ifPresent(message -> {
            words.add(Gap.mm(1.5));
            words.add(Text.of(message, Style.ADDRESS));
        });
        pages.add(Framed.of(new Stack(words))).add(Gap.mm(6));
    }

    private void pieces(Pages pages, Slip slip) {
        boolean hasPrices = !slip.isGift() && slip.said(OrderField.PRICE).isPresent();
        Length price = hasPrices ? PRICE : Length.ZERO;
        Length what = pages.measure().minus(TICK).minus(COUNT).minus(PICTURE).minus(price);
        List<Length> columns =
                hasPrices ? List.of(TICK, COUNT, PICTURE, what, price) : List.of(TICK, COUNT, PICTURE, what);
        pages.table(Row.head(columns, heads(hasPrices)));
        for (RowFate row : slip.rows()) {
            String said = slip.text(row.row(), OrderField.PRICE);
            for (List<Unit> alike : Slip.alike(row.units())) {
                List<Block> cells = new ArrayList<>(List.of(
                        Tick.small(),
                        Text.right(Words.say("slips.count", alike.size()), Style.FIGURE),
                        picture(alike.get(0)),
                        piece(alike.get(0))));
                if (hasPrices) {
                    cells.add(Text.right(said, Style.BODY));
                    said = ""; // it is the row's, whatever the row consists of
                }
                pages.add(Row.of(columns, cells));
            }
        }
        pages.endTable().add(Gap.mm(6));
    }

    private static List<Block> heads(boolean hasPrices) {
        List<Block> heads = new ArrayList<>(List.of(
                Text.of("", Style.LABEL),
                Text.right(Words.say("slips.head-count"), Style.LABEL),
                Gap.mm(0),
                Text.of(Words.say("slips.head-piece"), Style.LABEL)));
        if (hasPrices) {
            heads.add(Text.right(Words.say("slips.head-price"), Style.LABEL));
        }
        return heads;
    }

    private Block picture(Unit unit) {
        return new Picture(thumbnails.onBlank(unit), PICTURE.minus(Length.mm(4)), PICTURE_HIGH);
    }

    private static Block piece(Unit unit) {
        Blank blank = unit.matched().blank();
        List<Block> piece = new ArrayList<>();
        piece.add(Text.of(blank.sku() + "  " + blank.name(), Style.STRONG));
        piece.add(Text.of(Words.say("slips.design", unit.matched().design().name()), Style.BODY));
        unit.texts().forEach((field, text) -> piece.add(Text.of(Words.say("slips.text", field, text), Style.BODY)));
        if (!blank.parts().isEmpty()) {
            piece.add(Text.of(Words.say("slips.parts", String.join(", ", blank.parts())), Style.BODY));
        }
        return new Stack(piece);
    }

    /** What belongs into the box and comes from an earlier run. */
    private static void before(Pages pages, Slip slip) {
        List<Block> before = new ArrayList<>();
        for (RowFate row : slip.rows()) {
            int pieces = row.skipped().stream()
                    .filter(skipped -> skipped.code().equals(SkippedRow.ALREADY_MADE))
                    .mapToInt(SkippedRow::pieces)
                    .sum();
            if (pieces > 0 && !slip.isSaidElsewhere(row)) {
                before.add(Gap.mm(1));
                before.add(Text.of(Words.say("slips.missing-row", pieces, named(slip, row.row())), Style.BODY));
            }
        }
        if (!before.isEmpty()) {
            before.add(0, Text.of(Words.say("slips.before"), Style.STRONG));
            pages.add(new Stack(before)).add(Gap.mm(6));
        }
    }

    /** What the packer must not wait for in vain, and must not ship without asking. */
    private static void missing(Pages pages, Slip slip) {
        if (slip.isComplete()) {
            return;
        }
        List<Block> missing = new ArrayList<>(List.of(Text.of(Words.say("slips.missing"), Style.STRONG)));
        for (RowFate row : slip.rows()) {
            for (HeldRow held : row.held()) {
                missing.add(Gap.mm(1.5));
                missing.add(Text.of(waiting(slip, held), Style.BODY));
                missing.add(
                        Text.of(held.reason().message() + " " + held.reason().cure(), Style.SMALL));
            }
        }
        pages.add(Framed.of(new Stack(missing))).add(Gap.mm(6));
    }

    private static String named(Slip slip, bandwright.pipeline.rows.Row row) {
        return Stream.of(OrderField.SKU, OrderField.PRODUCT, OrderField.VARIATION, OrderField.DESIGN)
                .map(field -> slip.text(row, field))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
    }

    /** How many of what, as the order names it. */
    private static String waiting(Slip slip, HeldRow held) {
        String what = named(slip, held.row());
        return held.pieces() == 0
                ? Words.say("slips.missing-uncounted", what)
                : Words.say("slips.missing-row", held.pieces(), what);
    }

    private static void last(Pages pages, Slip slip) {
        slip.said(OrderField.NOTE).ifPresent(note -> pages.add(Text.of(Words.say("slips.note", note), Style.BODY))
                .add(Gap.mm(3)));
        Set<String> care = slip.rows().stream()
                .flatMap(row -> row.units().stream())
                .map(unit -> unit.matched().blank())
                .filter(blank -> !blank.care().isEmpty())
                .map(blank -> Words.say("slips.care", blank.name(), blank.care()))
                .collect(Collectors.toCollection(LinkedHashSet::new));
        care.forEach(words -> pages.add(Text.of(words, Style.SMALL)).add(Gap.mm(1)));
    }
}
