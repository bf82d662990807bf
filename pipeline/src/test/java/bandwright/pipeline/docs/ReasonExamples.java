package bandwright.pipeline.docs;

import bandwright.pipeline.allot.AllotReason;
import bandwright.pipeline.approve.ApproveReason;
import bandwright.pipeline.artwork.Flaw;
import bandwright.pipeline.held.Reason;
import bandwright.pipeline.intake.IntakeReason;
import bandwright.pipeline.intake.listing.ListingReason;
import bandwright.pipeline.match.MatchReason;
import bandwright.pipeline.match.text.TextReason;
import bandwright.pipeline.owed.OwedReason;
import bandwright.pipeline.size.SizeReason;
import bandwright.pipeline.size.SizeReason.ContrastLow.Cure;
import bandwright.pipeline.type.TypeReason;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blank;
import bandwright.rules.designs.Placement;
import bandwright.rules.heat.HeatChoice.Refusal;
import bandwright.rules.heat.HeatChoice.Why;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.orders.OrderField;
import bandwright.rules.orders.Product;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** One example of every way in which a row can be held, in the order of the stages. A test names those that lack one. */
final class ReasonExamples {
    private final Rulebook rules = BuiltIn.rules();

    List<Reason> all() {
        List<Reason> all = new ArrayList<>(intake());
        all.addAll(listings());
        all.add(new ApproveReason.WaitingForApproval("4KX7Q", ""));
        all.add(new ApproveReason.WaitingForApproval("4KX7Q", "yes"));
        all.addAll(names());
        all.addAll(texts());
        all.addAll(heat());
        all.addAll(size());
        all.add(new SizeReason.OrderIncomplete(List.of("web-shop.csv, row 4 (blank-unknown)")));
        all.add(new AllotReason.OutOfStock("TUM-12-W", 2));
        all.addAll(owed());
        all.add(new TypeReason.TextTooLong("name", "Ada of the North Gallery", "12"));
        all.add(new TypeReason.GlyphMissing("Ada \u0917", 0x917));
        all.add(new TypeReason.FontUnreadable("copperplate"));
        return all;
    }

    private static List<Reason> intake() {
        List<Reason> all = new ArrayList<>(List.of(
                new IntakeReason.NumberDamaged(OrderField.ORDER, "1234567890123456800"),
                new IntakeReason.OrderMissing(""),
                new IntakeReason.OrderMissing("#REF!"),
                new IntakeReason.QuantityUnclear("2.5", 500),
                new IntakeReason.QuantityUnclear("", 500),
                new IntakeReason.DateUnclear(
                        OrderField.SHIP_BY, "3/4/2026", List.of(LocalDate.of(2026, 3, 4), LocalDate.of(2026, 4, 3))),
                new IntakeReason.DateUnclear(OrderField.SHIP_BY, "next week", List.of())));
        all.add(new IntakeReason.DateUnclear(OrderField.SHIP_BY, "13/4/2026", List.of(LocalDate.of(2026, 4, 13))));
        return all;
    }

    private static List<Reason> listings() {
        Product lamp = new Product(
                "",
                "Storm lamp mug",
                new TreeMap<>(Map.of("Size", "11 oz")),
                "MUG-11-W",
                "lamp",
                1,
                new TreeMap<>(),
                "",
                4);
        return List.of(
                new ListingReason.ProductUnknown(
                        "Storm lamp mgu", "", Optional.of(lamp), ",Storm lamp mgu,,SKU,DESIGN,1"),
                new ListingReason.ProductUnknown(
                        "Tide table mug", "Size: 15 oz", Optional.empty(), ",Tide table mug,Size=15 oz,SKU,DESIGN,1"),
                new ListingReason.ProductTie("Storm lamp mug", 4, 7));
    }

    private static List<Reason> texts() {
        OrderField cell = OrderField.PERSONALISATION;
        return List.of(
                new TextReason.PersonalisationUnread(
                        cell, "in blue please", "choir", List.of("name", "year"), "Name: Ada, in blue please"),
                new TextReason.PersonalisationUnread(cell, "Ada", "tern", List.of(), "Ada"),
                new TextReason.TextsNotDealt(cell, "name", 2, 3, "Ada; Bo"),
                new TextReason.TextMissing(cell, "name", "choir", ""),
                new TextReason.TextTooLong(
                        cell, "name", "Ada of the North Gallery", 24, 12, "Ada of the North Gallery"));
    }

    private static List<Reason> names() {
        List<Reason> all = new ArrayList<>(List.of(
                new MatchReason.BlankUnknown("MUG-11-WH", Optional.of("MUG-11-W")),
                new MatchReason.BlankUnknown("tankard", Optional.empty()),
                new MatchReason.BlankUnknown("", Optional.empty()),
                new MatchReason.DesignUnknown("turn", Optional.of("tern")),
                new MatchReason.DesignUnknown("puffin", Optional.empty()),
                new MatchReason.DesignUnknown("", Optional.empty()),
                new MatchReason.ArtworkMissing("tern", "tern.jpg", Optional.of("Tern-final.jpg")),
                new MatchReason.ArtworkMissing("tern", "tern.jpg", Optional.empty())));
        for (Flaw flaw : Flaw.values()) {
            all.add(new MatchReason.ArtworkUnreadable("tern.jpg", flaw));
        }
        return all;
    }

    private List<Reason> heat() {
        List<Reason> all = new ArrayList<>();
        all.add(new MatchReason.HeatSourceUnknown("clmp", Optional.of("clamp"), List.of("clamp", "oven")));
        all.add(new MatchReason.HeatSourceUnknown("kiln", Optional.empty(), List.of("clamp", "oven")));
        for (Why why : Why.values()) {
            all.add(refused(why));
        }
        Blank glass = blank("STEIN-16-F");
        all.add(new MatchReason.NoHeatSource(
                glass,
                List.of(
                        new Refusal(source("clamp"), Why.NOT_ALLOWED),
                        new Refusal(source("flat"), Why.ROUND_NOT_HERE))));
        all.add(new MatchReason.NoHeatSource(glass, List.of()));
        return all;
    }

    private Reason refused(Why why) {
        return switch (why) {
            case FLAT_NOT_HERE -> refused(why, "COAST-R", "clamp");
            case ROUND_NOT_HERE -> refused(why, "MUG-11-W", "flat");
            case NO_SETTING -> refused(why, "STEIN-22-W", "oven");
            case NOT_ALLOWED -> refused(why, "STEIN-16-F", "clamp");
            case NOT_LISTED -> refused(why, "CAMP-12-E", "clamp");
            case TOO_NARROW -> refused(why, "TUM-12-W", "clamp");
            case TOO_WIDE -> refused(why, "MUG-20-W", "tumbler");
            case LEANS_TOO_MUCH -> refused(why, "CONE-12-W", "clamp");
        };
    }

    private Reason refused(Why why, String sku, String source) {
        return new MatchReason.HeatSourceRefused(blank(sku), new Refusal(source(source), why));
    }

    private Blank blank(String sku) {
        return rules.blanks().find(sku).orElseThrow();
    }

    private HeatSource source(String id) {
        return rules.heatSources().find(id).orElseThrow();
    }

    private List<Reason> size() {
        Length wide = Length.mm(240);
        Length high = Length.mm(440);
        PaperRoom room = PaperRoom.of(
                rules.papers().find("letter").orElseThrow(),
                rules.printers().list().get(0));
        List<Reason> all = new ArrayList<>(List.of(
                new SizeReason.BandEmpty("MUG-06-W", "clamp"),
                new SizeReason.SidesEmpty(
                        "MUG-06-W", "clamp", "keeper", Placement.HANDLE_LEFT, Length.mm(100), Length.mm(229)),
                new SizeReason.TooSlim("tern.jpg", 6000, 4),
                new SizeReason.PictureDamaged("tern.jpg"),
                new SizeReason.PpiLow("tern.jpg", "MUG-11-W", 72, 100, "828 x 355", "1656 x 709"),
                new SizeReason.CropLarge("tern.jpg", "MUG-11-W", 0.42, 0.35),
                new SizeReason.StretchLarge("tern.jpg", "MUG-11-W", 0.18, 0.10),
                contrastLow("yellow", Words.say("size.ground.base", "pink"), 1.42, Cure.DARKER, false),
                contrastLow("black", Words.say("size.ground.print", "dark blue"), 1.71, Cure.LIGHTER, true),
                contrastLow("grey", Words.say("size.ground.print", "grey"), 1.08, Cure.NO_INK, true),
                new SizeReason.TooLargeForPaper("STEIN-22-W", wide, high, Optional.of(room)),
                new SizeReason.TooLargeForPaper("STEIN-22-W", wide, high, Optional.empty())));
        return all;
    }

    private static Reason contrastLow(String letters, String ground, double ratio, Cure cure, boolean isOnWhite) {
        return new SizeReason.ContrastLow("name", letters, ground, ratio, 2, ratio < 1.5, cure, isOnWhite);
    }

    private static List<Reason> owed() {
        return List.of(
                new OwedReason.StatedDifferently("web-shop.csv, row 3", "weekend-orders.xlsx, Orders, row 9"),
                new OwedReason.ChangedAfterPrinting(
                        List.of("Q1042-1-1 (MUG-11-W, tern)"), "MUG-11-W, choir", OrderField.DESIGN));
    }
}
