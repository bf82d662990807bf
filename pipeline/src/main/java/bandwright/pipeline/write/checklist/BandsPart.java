package bandwright.pipeline.write.checklist;

import bandwright.pipeline.load.Load;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.write.list.Block;
import bandwright.pipeline.write.list.Gap;
import bandwright.pipeline.write.list.Pages;
import bandwright.pipeline.write.list.Row;
import bandwright.pipeline.write.list.Stack;
import bandwright.pipeline.write.list.Style;
import bandwright.pipeline.write.list.Text;
import bandwright.rules.Shop;
import bandwright.rules.blanks.BandSum;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.PlacePlan;
import bandwright.rules.designs.Placement;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where pictures stand, and why the band is as large as it is: once for each blank, heat source and placement of the run,
 * by the blank's sku.
 */
final class BandsPart {
    private static final Length PLAN = Length.mm(11);

    private record Alike(Blank blank, HeatSource source, Placement placement) {
        static Alike of(Unit unit) {
            return new Alike(
                    unit.matched().blank(),
                    unit.matched().source(),
                    unit.matched().design().placement());
        }
    }

    private BandsPart() {}

    static void write(Pages pages, List<Load> loads, Shop shop) {
        Map<Alike, Unit> units = new LinkedHashMap<>();
        loads.stream().flatMap(load -> load.units().stream()).forEach(unit -> units.putIfAbsent(Alike.of(unit), unit));
        pages.add(Text.of(Words.say("checklist.bands"), Style.HEADING)).add(Gap.mm(1));
        pages.add(Text.of(Words.say("checklist.bands-how"), Style.BODY)).add(Gap.mm(2));
        Length drawn = Plan.width(PLAN).plus(Length.mm(4));
        List<Length> columns = List.of(drawn, pages.measure().minus(drawn));
        units.entrySet().stream()
                .sorted((one, other) -> one.getKey()
                        .blank()
                        .sku()
                        .compareTo(other.getKey().blank().sku()))
                .forEach(entry -> pages.add(Row.of(columns, cells(entry.getKey(), entry.getValue(), shop))));
    }

    private static List<Block> cells(Alike alike, Unit unit, Shop shop) {
        PlacePlan plan = PlacePlan.of(alike.blank(), unit.band(), alike.placement());
        BandSum sum = BandSum.of(alike.blank(), alike.source(), unit.band(), shop.unit());
        List<Block> words = new ArrayList<>();
        words.add(Text.of(
                Words.say(
                        "checklist.band",
                        alike.blank().sku(),
                        alike.source().name(),
                        alike.placement().word()),
                Style.STRONG));
        words.add(Text.of(Words.say("checklist.band-around", sum.around()), Style.SMALL));
        words.add(Text.of(Words.say("checklist.band-up", sum.up()), Style.SMALL));
        sum.more().forEach(line -> words.add(Text.of(line, Style.SMALL)));
        return List.of(new Plan(plan, !alike.blank().form().isFlat(), PLAN), new Stack(words));
    }
}
