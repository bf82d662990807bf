package bandwright.pipeline.tile;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.Orientation;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.intake.Wording;
import bandwright.pipeline.intake.listing.Item;
import bandwright.pipeline.load.Load;
import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.match.Piece;
import bandwright.pipeline.rows.From;
import bandwright.pipeline.rows.Header;
import bandwright.pipeline.rows.Row;
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
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import bandwright.rules.units.Rgb;
import bandwright.rules.units.TemperatureUnit;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;

/** The lighthouse's gift shop as far as tiling can see it: papers, units of any size, and how the shop cuts. */
final class GiftShop {
    private static final HeatSource CLAMP = new HeatSource(
            "clamp",
            "Clamp press",
            HeatKind.MUG_PRESS,
            1,
            Length.inches(0.5),
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
            0,
            0,
            "");
    private static final PressSetting SETTING = new PressSetting(
            Optional.of(Material.CERAMIC),
            HeatKind.MUG_PRESS,
            "",
            Optional.empty(),
            180,
            "firm",
            Allowed.YES,
            false,
            "hot",
            "",
            List.of(),
            Evidence.COMMON_PRACTICE,
            "");
    private static final MatchedLine LINE = line();

    private GiftShop() {}

    static Shop scissors() {
        return shop(Length.mm(2), Length.mm(4), Length.mm(14), Length.mm(30), Cutting.SCISSORS);
    }

    static Shop trimmer() {
        return shop(Length.mm(2), Length.mm(4), Length.mm(14), Length.mm(30), Cutting.TRIMMER);
    }

    static Shop noFlag(Length gap) {
        return shop(Length.ZERO, gap, Length.ZERO, Length.ZERO, Cutting.SCISSORS);
    }

    static Shop shop(Length border, Length gap, Length flagDepth, Length flagHeight, Cutting cutting) {
        return new Shop(
                "Quillmoor Lighthouse Trust",
                LengthUnit.MM,
                TemperatureUnit.C,
                Optional.empty(),
                List.of(),
                "",
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
                flagDepth,
                flagHeight,
                cutting,
                StockRule.NOTE,
                IncompleteOrder.MAKE,
                true,
                0.03,
                500,
                90,
                Proofs.COLOURED);
    }

    static Rulebook rules(Shop shop) {
        return new Rulebook(
                shop,
                new Blanks(List.of()),
                new HeatSources(List.of(CLAMP)),
                new PressSettings(List.of(SETTING)),
                new Papers(List.of()),
                new Printers(List.of()),
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

    static PaperRoom room(String id, Length width, Length height, Length margin, Optional<BigDecimal> cost) {
        Paper paper = new Paper(id, id, width, Optional.of(height), margin, margin, margin, margin, cost, "");
        Printer printer = new Printer(
                "desk",
                List.of(id),
                MirrorBy.FILE,
                ColourBy.DRIVER,
                Optional.empty(),
                Intent.RELATIVE_COLORIMETRIC,
                1,
                1,
                "");
        return PaperRoom.of(paper, printer);
    }

    static PaperRoom letter() {
        return room("letter", Length.inches(8.5), Length.inches(11), Length.mm(6.35), Optional.empty());
    }

    static PaperRoom thirteenByNineteen() {
        return room("13 x 19", Length.inches(13), Length.inches(19), Length.mm(6.35), Optional.empty());
    }

    static Unit unit(String id, Box size, List<PaperRoom> rooms) {
        Band band = new Band(
                size.width(),
                size.height(),
                size.width(),
                Length.ZERO,
                Length.ZERO,
                Length.ZERO,
                List.of(),
                Optional.empty());
        Transfer transfer = new Transfer(size.width(), size.height(), List.of());
        return new Unit(id, LINE, 1, new TreeMap<>(), band, transfer, rooms, OptionalInt.of(300), List.of());
    }

    static Box mm(double width, double height) {
        return Box.of(Length.mm(width), Length.mm(height));
    }

    /** Loads of so many units each, in that order. */
    static List<Load> loads(List<Unit> units, int piecesALoad) {
        List<Load> loads = new ArrayList<>();
        for (int from = 0; from < units.size(); from += piecesALoad) {
            int number = loads.size() + 1;
            List<Unit> some = units.subList(from, Math.min(units.size(), from + piecesALoad));
            loads.add(new Load(number, CLAMP, 1, SETTING, 200 * number, 200 * number + 180, some));
        }
        return loads;
    }

    private static MatchedLine line() {
        Row row = new Row(new From("orders.csv", Optional.empty(), 2), new Header(List.of(), Map.of()), List.of());
        OrderLine line = new OrderLine(
                row,
                "",
                "T1",
                "1",
                Optional.empty(),
                Optional.empty(),
                1,
                List.of(Item.own("MUG", "tern")),
                Wording.NONE,
                "",
                false);
        Blank blank = new Blank(
                "MUG",
                List.of(),
                "Mug",
                Material.CERAMIC,
                new Form.Cylinder(Length.mm(260), Length.mm(101)),
                Length.ZERO,
                Length.ZERO,
                Length.ZERO,
                Length.ZERO,
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
                "",
                Optional.empty(),
                "",
                Evidence.MEASURED,
                "");
        ArtworkFile artwork = new ArtworkFile(
                "tern.jpg", Path.of("tern.jpg"), 1, ArtworkFile.Kind.JPEG, 100, 100, Orientation.TOP_LEFT);
        return new MatchedLine(
                line, blank, CLAMP, SETTING, Design.ofArtwork("tern.jpg"), artwork, Piece.alike(1, new TreeMap<>()));
    }
}
