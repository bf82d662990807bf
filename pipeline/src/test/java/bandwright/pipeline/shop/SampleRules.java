package bandwright.pipeline.shop;

import bandwright.rules.Rulebook;
import bandwright.rules.Shop;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Blanks;
import bandwright.rules.designs.Design;
import bandwright.rules.designs.Designs;
import bandwright.rules.designs.TextField;
import bandwright.rules.designs.Texts;
import bandwright.rules.heat.Cautions;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.heat.HeatSources;
import bandwright.rules.heat.PressSetting;
import bandwright.rules.heat.PressSettings;
import bandwright.rules.orders.IncompleteOrder;
import bandwright.rules.orders.OrderColumns;
import bandwright.rules.orders.Proofs;
import bandwright.rules.orders.Sites;
import bandwright.rules.paper.Cutting;
import bandwright.rules.paper.Paper;
import bandwright.rules.paper.Papers;
import bandwright.rules.paper.Printer;
import bandwright.rules.paper.Printers;
import bandwright.rules.stock.Stock;
import bandwright.rules.stock.StockRule;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import bandwright.rules.units.TemperatureUnit;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/** The rulebook of a test: a shop with the built-in values and empty tables, but for what the test says. */
public final class SampleRules {
    private LengthUnit unit = LengthUnit.IN;
    private List<String> shopPapers = List.of("letter");
    private double cropNote = 0.15;
    private double cropHold = 0.35;
    private double colourNote = 5;
    private Length border = Length.mm(2);
    private Length gap = Length.mm(4);
    private Length flagDepth = Length.mm(14);
    private Length flagHeight = Length.mm(30);
    private Cutting cutting = Cutting.SCISSORS;
    private boolean artworkByName = true;
    private List<Blank> blanks = List.of();
    private List<HeatSource> sources = List.of();
    private List<PressSetting> settings = List.of();
    private List<Paper> papers = List.of();
    private List<Printer> printers = List.of();
    private List<Design> designs = List.of();
    private List<TextField> texts = List.of();

    public SampleRules unit(LengthUnit shown) {
        unit = shown;
        return this;
    }

    public SampleRules shopPapers(List<String> ids) {
        shopPapers = ids;
        return this;
    }

    public SampleRules crop(double note, double hold) {
        cropNote = note;
        cropHold = hold;
        return this;
    }

    public SampleRules colourNote(double above) {
        colourNote = above;
        return this;
    }

    public SampleRules trim(Length atBorder, Length between) {
        border = atBorder;
        gap = between;
        return this;
    }

    public SampleRules flag(Length depth, Length height) {
        flagDepth = depth;
        flagHeight = height;
        return this;
    }

    public SampleRules cutting(Cutting how) {
        cutting = how;
        return this;
    }

    public SampleRules artworkByName(boolean isTaken) {
        artworkByName = isTaken;
        return this;
    }

    public SampleRules blanks(List<Blank> all) {
        blanks = all;
        return this;
    }

    public SampleRules sources(List<HeatSource> all) {
        sources = all;
        return this;
    }

    public SampleRules settings(List<PressSetting> all) {
        settings = all;
        return this;
    }

    public SampleRules papers(List<Paper> all) {
        papers = all;
        return this;
    }

    public SampleRules printers(List<Printer> all) {
        printers = all;
        return this;
    }

    public SampleRules designs(List<Design> all, List<TextField> theirTexts) {
        designs = all;
        texts = theirTexts;
        return this;
    }

    public Shop shop() {
        return new Shop(
                "Quillmoor Lighthouse Trust",
                unit,
                unit == LengthUnit.IN ? TemperatureUnit.F : TemperatureUnit.C,
                Optional.empty(),
                shopPapers,
                "desk",
                1,
                LocalTime.of(9, 0),
                List.of(),
                Optional.empty(),
                false,
                200,
                100,
                360,
                0.03,
                0.10,
                cropNote,
                cropHold,
                3,
                2,
                colourNote,
                border,
                gap,
                flagDepth,
                flagHeight,
                cutting,
                StockRule.NOTE,
                IncompleteOrder.MAKE,
                artworkByName,
                0.03,
                500,
                90,
                Proofs.COLOURED);
    }

    public Rulebook rules() {
        return rules(shop());
    }

    /** With those tables, for a shop of the test's own. */
    public Rulebook rules(Shop shop) {
        return new Rulebook(
                shop,
                new Blanks(blanks),
                new HeatSources(sources),
                new PressSettings(settings),
                new Papers(papers),
                new Printers(printers),
                new Designs(designs),
                new Texts(texts),
                List.of(),
                List.of(),
                new Sites(List.of()),
                new OrderColumns(List.of()),
                new Stock(List.of()),
                List.of(),
                new Cautions(List.of()));
    }
}
