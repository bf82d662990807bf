package bandwright.pipeline.tile;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.intake.Wording;
import bandwright.pipeline.intake.listing.Item;
import bandwright.pipeline.load.Load;
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
import bandwright.pipeline.size.Transfer;
import bandwright.pipeline.size.Unit;
import bandwright.rules.Rulebook;
import bandwright.rules.Shop;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Material;
import bandwright.rules.designs.Design;
import bandwright.rules.heat.Allowed;
import bandwright.rules.heat.HeatKind;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.heat.PressSetting;
import bandwright.rules.paper.Cutting;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

/** The lighthouse's gift shop as far as tiling can see it: papers, units of any size, and how the shop cuts. */
final class TilingShop {
    private static final HeatSource CLAMP =
            SampleHeat.of("clamp", HeatKind.MUG_PRESS).source();
    private static final PressSetting SETTING =
            SampleHeat.setting(Material.CERAMIC, HeatKind.MUG_PRESS, Optional.empty(), 180, Allowed.YES);
    private static final MatchedLine LINE = line();

    private TilingShop() {}

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
        return new SampleRules()
                .trim(border, gap)
                .flag(flagDepth, flagHeight)
                .cutting(cutting)
                .shop();
    }

    static Rulebook rules(Shop shop) {
        return new SampleRules().rules(shop);
    }

    static PaperRoom room(String id, Length width, Length height, Length margin, Optional<BigDecimal> cost) {
        return PaperRoom.of(
                SamplePaper.of(id, id, width, Optional.of(height), margin, cost),
                SamplePaper.printer("desk", List.of(id), MirrorBy.FILE));
    }

    static PaperRoom letter() {
        return room("letter", Length.inches(8.5), Length.inches(11), Length.mm(6.35), Optional.empty());
    }

    static PaperRoom thirteenByNineteen() {
        return room("13 x 19", Length.inches(13), Length.inches(19), Length.mm(6.35), Optional.empty());
    }

    static Unit unit(String id, Box size, List<PaperRoom> rooms) {
        return unit(id, new Transfer(size.width(), size.height(), List.of()), rooms);
    }

    static Unit unit(String id, Transfer transfer, List<PaperRoom> rooms) {
        return new Unit(
                id,
                LINE,
                1,
                new TreeMap<>(),
                SampleUnit.bandOf(transfer),
                transfer,
                rooms,
                OptionalInt.of(300),
                Optional.empty(),
                List.of());
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
            loads.add(new Load(number, CLAMP, 1, SETTING, 200 * number, 200 * number + 180, some, false));
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
                false,
                Optional.empty());
        Blank blank = SampleBlank.cylinder("MUG", 260, 101).blank();
        ArtworkFile artwork = SampleUnit.artwork("tern.jpg", 100, 100);
        return new MatchedLine(
                line,
                blank,
                CLAMP,
                SETTING,
                Design.ofArtwork("tern.jpg"),
                List.of(artwork),
                Piece.alike(1, new TreeMap<>()));
    }
}
