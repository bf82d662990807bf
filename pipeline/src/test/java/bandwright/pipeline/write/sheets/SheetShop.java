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
import bandwright.pipeline.shop.SampleBlank;
import bandwright.pipeline.shop.SampleHeat;
import bandwright.pipeline.shop.SamplePaper;
import bandwright.pipeline.shop.SampleRules;
import bandwright.pipeline.shop.SampleUnit;
import bandwright.pipeline.size.Layer;
import bandwright.pipeline.size.Transfer;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.tile.Rotation;
import bandwright.rules.Shop;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Material;
import bandwright.rules.designs.Design;
import bandwright.rules.heat.Allowed;
import bandwright.rules.heat.HeatKind;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.heat.PressSetting;
import bandwright.rules.paper.FlagLaw;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.Paper;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.paper.Printer;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import bandwright.rules.units.Temperature;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

/** The gift shop of the Quillmoor Lighthouse Trust, which keeps terns, tide tables and storm lamps on mugs. */
public final class SheetShop {
    public static final RunId RUN = new RunId(LocalDate.of(2026, 3, 2), 1);

    private SheetShop() {}

    public static Shop shop() {
        return shop(LengthUnit.IN);
    }

    public static Shop shop(LengthUnit unit) {
        return new SampleRules().unit(unit).shop();
    }

    public static Printer printer(MirrorBy mirror, double scaleX, double scaleY) {
        return SamplePaper.printer("desk", List.of("letter"), mirror, scaleX, scaleY);
    }

    public static Paper paper(String id, String name, double widthMm, double heightMm) {
        Optional<Length> height = Optional.of(Length.mm(heightMm));
        return SamplePaper.of(id, name, Length.mm(widthMm), height, Length.mm(5), Optional.empty());
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
        return new Unit(
                id,
                line(order, sku, design, transfer),
                piece,
                new TreeMap<>(),
                SampleUnit.bandOf(transfer),
                transfer,
                List.of(room),
                OptionalInt.of(300),
                Optional.empty(),
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
                false,
                Optional.empty());
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
                List.of(artwork),
                Piece.alike(1, new TreeMap<>()));
    }

    private static Blank blank(String sku) {
        return SampleBlank.cylinder(sku, 260, 96)
                .name("White mug 11 oz")
                .handle(26)
                .shelf("A1")
                .blank();
    }

    private static HeatSource clamp() {
        return SampleHeat.of("clamp", HeatKind.MUG_PRESS)
                .name("Mug press")
                .clearance(Length.mm(12))
                .source();
    }

    private static PressSetting setting() {
        Optional<Temperature> heat = Optional.of(Temperature.celsius(190));
        return SampleHeat.setting(Material.CERAMIC, HeatKind.MUG_PRESS, heat, 180, Allowed.YES);
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
