package bandwright.pipeline.load;

import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.match.TestShop;
import bandwright.pipeline.owed.OwedLine;
import bandwright.pipeline.past.Past;
import bandwright.pipeline.pixels.Sights;
import bandwright.pipeline.size.Sizing;
import bandwright.pipeline.size.Unit;
import bandwright.rules.Rulebook;
import bandwright.rules.Shop;
import bandwright.rules.blanks.Form;
import bandwright.rules.blanks.Material;
import bandwright.rules.day.Break;
import bandwright.rules.designs.Fit;
import bandwright.rules.heat.Circuit;
import bandwright.rules.heat.HeatKind;
import bandwright.rules.heat.HeatRates;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.units.Length;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;

/** Any shop with a clamp for one piece, a plate that turns pieces and an oven; any weekend's pieces for them. */
record RandomDay(Rulebook rules, List<Unit> units) {
    static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);

    private static final String[][] KINDS = {
        {"MUG", "clamp"},
        {"MUG", "oven"},
        {"GLASS", "oven"},
        {"BIG", "oven"},
        {"HUGE", "oven"},
        {"TUMBLER", "oven"},
        {"COASTER", "plate"}
    };

    /** @param most pieces of one line */
    static RandomDay of(long seed, int lines, int most) {
        SplittableRandom random = new SplittableRandom(seed);
        TestShop shop = TestShop.ofTheTrust();
        Form form = new Form.Cylinder(Length.mm(240), Length.mm(100));
        shop.blanks.add(TestShop.blank("BIG", Material.GLASS, form, 30, 0, List.of(), 4));
        shop.blanks.add(TestShop.blank("HUGE", Material.GLASS, form, 30, 0, List.of(), 9));
        shop.sources.clear();
        shop.sources.add(source("clamp", HeatKind.MUG_PRESS, 1, random));
        shop.sources.add(source("oven", HeatKind.OVEN, 6, random));
        shop.sources.add(source("plate", HeatKind.FLAT_PRESS, 1 + random.nextInt(2), random));
        List<MatchedLine> matched = new ArrayList<>();
        for (int i = 0; i < lines; i++) {
            String[] kind = KINDS[random.nextInt(KINDS.length)];
            Optional<LocalDate> date = Optional.of(MONDAY.plusDays(random.nextInt(3)));
            matched.add(line(
                    shop, "Q" + i, kind, 1 + random.nextInt(most), random.nextInt(5) == 0 ? Optional.empty() : date));
        }
        Rulebook rules = rules(shop.rules(), random);
        List<OwedLine> owed = matched.stream().map(OwedLine::whole).toList();
        return new RandomDay(
                rules,
                Sizing.each(owed, rules, new Sights(), Optional.empty(), Set.of())
                        .made());
    }

    PressDay plan() {
        return plan(units);
    }

    PressDay plan(List<Unit> inAnyOrder) {
        return Loading.all(inAnyOrder, rules, Past.NONE, MONDAY);
    }

    private static MatchedLine line(
            TestShop shop, String order, String[] kind, int quantity, Optional<LocalDate> shipBy) {
        OrderLine line = TestShop.line("", order, "1", kind[0], "heron", quantity, "", shipBy);
        return shop.matched(
                line,
                kind[0],
                kind[1],
                TestShop.design("heron", "heron.png", Fit.CONTAIN),
                TestShop.artwork("heron.png", 2000, 1000));
    }

    private static HeatSource source(String id, HeatKind kind, int pieces, SplittableRandom random) {
        int positions = 1 + random.nextInt(3);
        return new HeatSource(
                id,
                "The " + id,
                kind,
                1 + random.nextInt(2),
                Length.mm(5),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                pieces,
                kind == HeatKind.OVEN ? 1 : positions,
                random.nextInt(3) * 10,
                TestShop.source("any", kind, 1).covering(),
                random.nextInt(5) == 0 ? 0 : 400 + 100 * random.nextInt(14),
                random.nextInt(4) == 0 ? "" : "wall",
                random.nextInt(4) * 200,
                new HeatRates(5 + random.nextInt(10), 1 + random.nextInt(5)),
                random.nextInt(4) * 15,
                random.nextInt(4) * 20,
                "");
    }

    private static Rulebook rules(Rulebook built, SplittableRandom random) {
        List<Break> breaks = new ArrayList<>();
        if (random.nextInt(2) == 0) {
            int minute = 10 + random.nextInt(100);
            breaks.add(new Break(
                    LocalTime.of(9, 0).plusMinutes(minute), LocalTime.of(9, 30).plusMinutes(minute)));
            breaks.add(new Break(LocalTime.of(13, 0), LocalTime.of(14, 0)));
        }
        Shop shop = built.shop();
        Optional<LocalTime> collection = Optional.of(LocalTime.of(11, 0)).filter(time -> random.nextInt(2) == 0);
        Shop own = new Shop(
                shop.name(),
                shop.unit(),
                shop.temperatureUnit(),
                shop.timeZone(),
                shop.papers(),
                shop.printer(),
                1 + random.nextInt(3),
                shop.dayStarts(),
                breaks,
                collection,
                random.nextInt(2) == 0,
                shop.ppiNote(),
                shop.ppiHold(),
                shop.warpPpi(),
                shop.stretchNote(),
                shop.stretchHold(),
                shop.cropNote(),
                shop.cropHold(),
                shop.contrastNote(),
                shop.contrastHold(),
                shop.colourNote(),
                shop.trimBorder(),
                shop.trimGap(),
                shop.flagDepth(),
                shop.flagHeight(),
                shop.cutting(),
                shop.stock(),
                shop.incompleteOrder(),
                shop.artworkByName(),
                shop.spoilRate(),
                shop.maxQuantity(),
                shop.keepBuyerDays(),
                shop.proofs());
        return new Rulebook(
                own,
                built.blanks(),
                built.heatSources(),
                built.pressSettings(),
                built.papers(),
                built.printers(),
                built.designs(),
                built.texts(),
                built.fonts(),
                built.products(),
                built.sites(),
                built.orderColumns(),
                built.stock(),
                List.of(new Circuit("wall", 120, 15 + 5 * random.nextInt(3), "")),
                built.cautions());
    }
}
