package bandwright.pipeline;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.Orientation;
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
import bandwright.pipeline.size.Note;
import bandwright.pipeline.size.Transfer;
import bandwright.pipeline.size.Unit;
import bandwright.rules.Rulebook;
import bandwright.rules.Shop;
import bandwright.rules.blanks.Backing;
import bandwright.rules.blanks.Band;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Blanks;
import bandwright.rules.blanks.Finish;
import bandwright.rules.blanks.Form;
import bandwright.rules.blanks.Material;
import bandwright.rules.designs.Design;
import bandwright.rules.designs.Designs;
import bandwright.rules.designs.Texts;
import bandwright.rules.heat.Allowed;
import bandwright.rules.heat.Cautions;
import bandwright.rules.heat.Covering;
import bandwright.rules.heat.HeatKind;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.heat.HeatSources;
import bandwright.rules.heat.PressSetting;
import bandwright.rules.heat.PressSettings;
import bandwright.rules.orders.IncompleteOrder;
import bandwright.rules.orders.OrderColumns;
import bandwright.rules.orders.OrderField;
import bandwright.rules.orders.Proofs;
import bandwright.rules.orders.Sites;
import bandwright.rules.paper.ColourBy;
import bandwright.rules.paper.Cutting;
import bandwright.rules.paper.Intent;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.Paper;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.paper.Papers;
import bandwright.rules.paper.Printer;
import bandwright.rules.paper.Printers;
import bandwright.rules.stock.Stock;
import bandwright.rules.stock.StockRule;
import bandwright.rules.table.Evidence;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import bandwright.rules.units.Rgb;
import bandwright.rules.units.Temperature;
import bandwright.rules.units.TemperatureUnit;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
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
        return new Paper(
                id,
                id,
                Length.mm(width),
                Optional.of(Length.mm(height)),
                Length.mm(5),
                Length.mm(5),
                Length.mm(5),
                Length.mm(5),
                Optional.of(new BigDecimal("0.20")),
                "");
    }

    public static Printer printer(String id, MirrorBy mirror) {
        return new Printer(
                id, List.of("letter"), mirror, ColourBy.DRIVER, Optional.empty(), Intent.PERCEPTUAL, 1, 1, "");
    }

    public static Blank mug(Optional<BigDecimal> cost) {
        return mug("MUG-11-W", cost);
    }

    public static Blank mug(String sku, Optional<BigDecimal> cost) {
        return new Blank(
                sku,
                List.of(),
                "white mug",
                Material.CERAMIC,
                new Form.Cylinder(Length.mm(258.13), Length.mm(95.25)),
                Length.ZERO,
                Length.ZERO,
                Length.ZERO,
                Length.mm(20),
                Length.ZERO,
                Length.ZERO,
                Length.ZERO,
                Rgb.WHITE,
                Optional.empty(),
                Finish.GLOSS,
                Backing.OPAQUE,
                List.of(),
                List.of(),
                1,
                "A1",
                cost,
                "",
                Evidence.MEASURED,
                "");
    }

    private static HeatSource clamp() {
        return new HeatSource(
                "clamp",
                "clamp press",
                HeatKind.MUG_PRESS,
                1,
                Length.mm(12.7),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                1,
                1,
                0,
                Covering.PROTECTIVE_PAPER,
                0,
                "",
                0,
                30,
                30,
                "");
    }

    public static PressSetting setting() {
        return new PressSetting(
                Optional.of(Material.CERAMIC),
                HeatKind.MUG_PRESS,
                "",
                Optional.of(Temperature.fahrenheit(375)),
                180,
                "medium",
                Allowed.YES,
                true,
                "hot",
                "",
                List.of(),
                Evidence.COMMON_PRACTICE,
                "");
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
                false);
    }

    public static Unit unit(OrderLine line, int piece, Blank blank) {
        ArtworkFile artwork = new ArtworkFile(
                "tern.jpg", Path.of("tern.jpg"), 1, ArtworkFile.Kind.JPEG, 3000, 1400, Orientation.TOP_LEFT);
        Length around = Length.mm(212.725);
        Length up = Length.mm(95.25);
        Band band = new Band(around, up, around, Length.ZERO, Length.ZERO, Length.ZERO, List.of(), Optional.empty());
        return new Unit(
                line.order() + "-" + line.line() + "-" + piece,
                new MatchedLine(
                        line,
                        blank,
                        CLAMP,
                        setting(),
                        Design.ofArtwork("tern.jpg"),
                        artwork,
                        Piece.alike(line.quantity(), line.wording().columns())),
                piece,
                line.wording().columns(),
                band,
                new Transfer(around, up, List.of()),
                List.of(ROOM),
                OptionalInt.of(312),
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
        return new Rulebook(
                shop(),
                new Blanks(blanks),
                new HeatSources(List.of(CLAMP)),
                new PressSettings(List.of(setting())),
                new Papers(List.of(LETTER)),
                new Printers(List.of(printer("desk", MirrorBy.FILE))),
                new Designs(List.of()),
                new Texts(List.of()),
                List.of(),
                List.of(),
                new Sites(List.of()),
                new OrderColumns(List.of()),
                new Stock(List.of()),
                List.of(),
                new Cautions(List.of()));
    }

    private static Shop shop() {
        return new Shop(
                "Quillmoor Lighthouse Trust",
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
                0.1,
                0.15,
                0.35,
                3,
                2,
                Length.mm(2),
                Length.mm(4),
                Length.mm(14),
                Length.mm(30),
                Cutting.SCISSORS,
                StockRule.NOTE,
                IncompleteOrder.MAKE,
                true,
                0.03,
                500,
                90,
                Proofs.COLOURED);
    }

    public static RunId id() {
        return new RunId(LocalDate.of(2026, 3, 2), 1);
    }
}
