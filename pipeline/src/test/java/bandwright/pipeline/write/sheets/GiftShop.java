package bandwright.pipeline.write.sheets;

import bandwright.pipeline.RunId;
import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.intake.Wording;
import bandwright.pipeline.intake.listing.Item;
import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.match.Piece;
import bandwright.pipeline.rows.From;
import bandwright.pipeline.rows.Header;
import bandwright.pipeline.rows.Row;
import bandwright.pipeline.size.Layer;
import bandwright.pipeline.size.Transfer;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.tile.Rotation;
import bandwright.rules.Shop;
import bandwright.rules.blanks.Backing;
import bandwright.rules.blanks.Band;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Finish;
import bandwright.rules.blanks.Form;
import bandwright.rules.blanks.Material;
import bandwright.rules.designs.Design;
import bandwright.rules.heat.Allowed;
import bandwright.rules.heat.Covering;
import bandwright.rules.heat.HeatKind;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.heat.PressSetting;
import bandwright.rules.orders.IncompleteOrder;
import bandwright.rules.orders.Proofs;
import bandwright.rules.paper.ColourBy;
import bandwright.rules.paper.Cutting;
import bandwright.rules.paper.FlagLaw;
import bandwright.rules.paper.Intent;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.Paper;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.paper.Printer;
import bandwright.rules.stock.StockRule;
import bandwright.rules.table.Evidence;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import bandwright.rules.units.Rgb;
import bandwright.rules.units.Temperature;
import bandwright.rules.units.TemperatureUnit;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;

/** The gift shop of the Quillmoor Lighthouse Trust, which keeps terns, tide tables and storm lamps on mugs. */
public final class GiftShop {
    public static final RunId RUN = new RunId(LocalDate.of(2026, 3, 2), 1);
    private static final Length ZERO = Length.ZERO;

    private GiftShop() {}

    public static Shop shop() {
        return shop(LengthUnit.IN);
    }

    public static Shop shop(LengthUnit unit) {
        return new Shop(
                "Quillmoor Lighthouse Trust",
                unit,
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

    public static Printer printer(MirrorBy mirror, double scaleX, double scaleY) {
        return new Printer(
                "desk",
                List.of("letter"),
                mirror,
                ColourBy.DRIVER,
                Optional.empty(),
                Intent.RELATIVE_COLORIMETRIC,
                scaleX,
                scaleY,
                "");
    }

    public static Paper paper(String id, String name, double widthMm, double heightMm) {
        Length margin = Length.mm(5);
        return new Paper(
                id,
                name,
                Length.mm(widthMm),
                Optional.of(Length.mm(heightMm)),
                margin,
                margin,
                margin,
                margin,
                Optional.empty(),
                "");
    }

    public static PaperRoom letter(Printer printer) {
        return PaperRoom.of(paper("letter", "Letter", 215.9, 279.4), printer);
    }

    public static PaperRoom letter() {
        return letter(printer(MirrorBy.FILE, 1, 1));
    }

    /** One picture that covers the whole upright box. */
    public static Transfer covering(ArtworkFile artwork, double widthMm, double heightMm) {
        Box box = Box.of(Length.mm(widthMm), Length.mm(heightMm));
        return new Transfer(box.width(), box.height(), List.of(new Layer.Picture(artwork, box, box)));
    }

    public static Unit unit(String order, int piece, Transfer transfer, PaperRoom room) {
        return unit(order + "-1-" + piece, order, piece, "MUG-11-W", "harbour terns", transfer, room);
    }

    public static Unit unit(
            String id, String order, int piece, String sku, String design, Transfer transfer, PaperRoom room) {
        Band band = new Band(
                transfer.width(), transfer.height(), transfer.width(), ZERO, ZERO, ZERO, List.of(), Optional.empty());
        return new Unit(
                id,
                line(order, sku, design, transfer),
                piece,
                new TreeMap<>(),
                band,
                transfer,
                List.of(room),
                OptionalInt.of(300),
                List.of());
    }

    private static MatchedLine line(String order, String sku, String design, Transfer transfer) {
        Row row = new Row(new From("weekend.csv", Optional.empty(), 2), new Header(List.of(), Map.of()), List.of());
        OrderLine line = new OrderLine(
                row,
                "",
                order,
                "1",
                Optional.empty(),
                Optional.empty(),
                1,
                List.of(Item.own(sku, design)),
                Wording.NONE,
                "",
                false);
        ArtworkFile artwork = transfer.layers().stream()
                .filter(Layer.Picture.class::isInstance)
                .map(layer -> ((Layer.Picture) layer).artwork())
                .findFirst()
                .orElseThrow();
        return new MatchedLine(
                line,
                blank(sku),
                clamp(),
                setting(),
                Design.ofArtwork(design),
                artwork,
                Piece.alike(1, new TreeMap<>()));
    }

    private static Blank blank(String sku) {
        return new Blank(
                sku,
                List.of(),
                "White mug 11 oz",
                Material.CERAMIC,
                new Form.Cylinder(Length.mm(260), Length.mm(96)),
                ZERO,
                ZERO,
                ZERO,
                Length.mm(26),
                ZERO,
                ZERO,
                ZERO,
                Rgb.WHITE,
                Optional.empty(),
                Finish.GLOSS,
                Backing.OPAQUE,
                List.of(),
                List.of(),
                1,
                "A1",
                Optional.empty(),
                "",
                Evidence.FROM_MEMORY,
                "");
    }

    private static HeatSource clamp() {
        return new HeatSource(
                "clamp",
                "Mug press",
                HeatKind.MUG_PRESS,
                1,
                Length.mm(12),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                1,
                1,
                0,
                Covering.PROTECTIVE_PAPER,
                300,
                "",
                600,
                20,
                20,
                "");
    }

    private static PressSetting setting() {
        return new PressSetting(
                Optional.of(Material.CERAMIC),
                HeatKind.MUG_PRESS,
                "",
                Optional.of(Temperature.celsius(190)),
                180,
                "medium",
                Allowed.YES,
                true,
                "hot",
                "",
                List.of(),
                Evidence.FROM_MEMORY,
                "");
    }

    /** The unit with its lower-left corner there, and its flag on the end that the rotation turns to the right or up. */
    public static Placed placed(Unit unit, int load, double xMm, double yMm, Rotation rotation) {
        Transfer transfer = unit.transfer();
        Length width = rotation.swapsSides() ? transfer.height() : transfer.width();
        Length height = rotation.swapsSides() ? transfer.width() : transfer.height();
        Box box = new Box(Length.mm(xMm), Length.mm(yMm), width, height);
        FlagLaw law = FlagLaw.of(shop());
        Box flag = rotation.swapsSides()
                ? new Box(
                        box.x().plus(width.minus(law.height()).half()),
                        box.top().plus(law.border()),
                        law.height(),
                        law.depth())
                : new Box(
                        box.right().plus(law.border()),
                        box.y().plus(height.minus(law.height()).half()),
                        law.depth(),
                        law.height());
        return new Placed(unit, load, box, rotation, Optional.of(flag));
    }
}
