package bandwright.pipeline;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.Reason;
import bandwright.pipeline.held.SkippedRow;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.intake.Wording;
import bandwright.pipeline.intake.listing.Item;
import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.match.Piece;
import bandwright.pipeline.rows.Cell;
import bandwright.pipeline.rows.From;
import bandwright.pipeline.rows.Header;
import bandwright.pipeline.rows.Row;
import bandwright.pipeline.shop.SampleBlank;
import bandwright.pipeline.shop.SampleHeat;
import bandwright.pipeline.shop.SamplePaper;
import bandwright.pipeline.shop.SampleRules;
import bandwright.pipeline.shop.SampleUnit;
import bandwright.pipeline.size.Note;
import bandwright.pipeline.size.Transfer;
import bandwright.pipeline.size.Unit;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Material;
import bandwright.rules.designs.Design;
import bandwright.rules.heat.Allowed;
import bandwright.rules.heat.Covering;
import bandwright.rules.heat.HeatKind;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.heat.PressSetting;
import bandwright.rules.orders.OrderField;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.Paper;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.paper.Printer;
import bandwright.rules.units.Length;
import bandwright.rules.units.Temperature;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

/** The lighthouse trust's gift shop: one mug, one press, letter paper, and rows as they come in. */
public final class GiftShop {
    public static final Paper LETTER = paper("letter", 215.9, 279.4);
    public static final PaperRoom ROOM = PaperRoom.of(LETTER, printer("desk", MirrorBy.FILE));
    public static final HeatSource CLAMP = clamp();
    public static final Blank MUG = mug(Optional.of(new BigDecimal("2.00")));
    public static final Header HEADER = header("Order", "SKU", "Artwork", "Qty", "Name");

    /** What a row is held for. */
    public record Missing(String artwork) implements Reason {
        @Override
        public String code() {
            return "artwork-missing";
        }

        @Override
        public OrderField field() {
            return OrderField.DESIGN;
        }

        @Override
        public String message() {
            return "The artwork folder has no \"" + artwork + "\".";
        }

        @Override
        public String cure() {
            return "Put it there.";
        }
    }

    private GiftShop() {}

    public static Paper paper(String id, double width, double height) {
        Optional<BigDecimal> cost = Optional.of(new BigDecimal("0.20"));
        return SamplePaper.of(id, id, Length.mm(width), Optional.of(Length.mm(height)), Length.mm(5), cost);
    }

    public static Printer printer(String id, MirrorBy mirror) {
        return SamplePaper.printer(id, List.of("letter"), mirror);
    }

    public static Blank mug(Optional<BigDecimal> cost) {
        return mug("MUG-11-W", cost);
    }

    public static Blank mug(String sku, Optional<BigDecimal> cost) {
        return SampleBlank.cylinder(sku, 258.13, 95.25)
                .name("white mug")
                .handle(20)
                .shelf("A1")
                .cost(cost)
                .blank();
    }

    private static HeatSource clamp() {
        return SampleHeat.of("clamp", HeatKind.MUG_PRESS)
                .name("clamp press")
                .clearance(Length.mm(12.7))
                .covering(Covering.PROTECTIVE_PAPER)
                .seconds(0, 30, 30)
                .source();
    }

    public static PressSetting setting() {
        Optional<Temperature> heat = Optional.of(Temperature.fahrenheit(375));
        return SampleHeat.setting(Material.CERAMIC, HeatKind.MUG_PRESS, heat, 180, Allowed.YES);
    }

    public static Header header(String... texts) {
        Map<String, OrderField> known = Map.of(
                "Order", OrderField.ORDER,
                "SKU", OrderField.SKU,
                "Artwork", OrderField.DESIGN,
                "Qty", OrderField.QUANTITY,
                "Name", OrderField.text("name"));
        Map<OrderField, Integer> columns = new LinkedHashMap<>();
        for (int i = 0; i < texts.length; i++) {
            OrderField field = known.get(texts[i]);
            if (field != null) {
                columns.put(field, i);
            }
        }
        return new Header(List.of(texts), columns);
    }

    public static Row row(From from, Header header, String... cells) {
        List<Cell> all = new ArrayList<>();
        for (String cell : cells) {
            all.add(Cell.of(cell));
        }
        return new Row(from, header, all);
    }

    public static From from(int row) {
        return new From("orders.xlsx", Optional.of("Orders"), row);
    }

    public static OrderLine line(Row row, int quantity) {
        TreeMap<String, String> texts = new TreeMap<>();
        String name = row.cell(OrderField.text("name")).text();
        if (!name.isEmpty()) {
            texts.put("name", name);
        }
        return new OrderLine(
                row,
                "",
                row.cell(OrderField.ORDER).text(),
                "1",
                Optional.empty(),
                Optional.empty(),
                quantity,
                List.of(Item.own(
                        row.cell(OrderField.SKU).text(),
                        row.cell(OrderField.DESIGN).text())),
                new Wording("", texts, "", List.of()),
                "",
                false,
                Optional.empty());
    }

    public static Unit unit(OrderLine line, int piece, Blank blank) {
        Transfer transfer = new Transfer(Length.mm(212.725), Length.mm(95.25), List.of());
        ArtworkFile artwork = SampleUnit.artwork("tern.jpg", 3000, 1400);
        return new Unit(
                line.order() + "-" + line.line() + "-" + piece,
                new MatchedLine(
                        line,
                        blank,
                        CLAMP,
                        setting(),
                        Design.ofArtwork("tern.jpg"),
                        List.of(artwork),
                        Piece.alike(line.quantity(), line.wording().columns())),
                piece,
                line.wording().columns(),
                SampleUnit.bandOf(transfer),
                transfer,
                List.of(ROOM),
                OptionalInt.of(312),
                Optional.empty(),
                List.of(new Note("crop", "A little is cut off.")));
    }

    public static HeldRow held(Row row, int pieces) {
        return new HeldRow(row, row.cell(OrderField.ORDER).text(), pieces, new Missing("storm-lamp.jpg"));
    }

    public static SkippedRow skipped(Row row, int pieces) {
        return new SkippedRow(row, row.cell(OrderField.ORDER).text(), pieces, "cancelled", "The order is cancelled.");
    }

    public static Rulebook rules() {
        return rules(List.of(MUG));
    }

    public static Rulebook rules(List<Blank> blanks) {
        return new SampleRules()
                .blanks(blanks)
                .sources(List.of(CLAMP))
                .settings(List.of(setting()))
                .papers(List.of(LETTER))
                .printers(List.of(printer("desk", MirrorBy.FILE)))
                .rules();
    }

    public static RunId id() {
        return new RunId(LocalDate.of(2026, 3, 2), 1);
    }
}
