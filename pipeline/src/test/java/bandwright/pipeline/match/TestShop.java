package bandwright.pipeline.match;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.intake.Wording;
import bandwright.pipeline.intake.listing.Item;
import bandwright.pipeline.rows.From;
import bandwright.pipeline.rows.Header;
import bandwright.pipeline.rows.Row;
import bandwright.pipeline.shop.SampleBlank;
import bandwright.pipeline.shop.SampleHeat;
import bandwright.pipeline.shop.SamplePaper;
import bandwright.pipeline.shop.SampleRules;
import bandwright.pipeline.shop.SampleUnit;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Blanks;
import bandwright.rules.blanks.Form;
import bandwright.rules.blanks.Material;
import bandwright.rules.blanks.Outline;
import bandwright.rules.designs.Design;
import bandwright.rules.designs.Designs;
import bandwright.rules.designs.Fit;
import bandwright.rules.designs.Placement;
import bandwright.rules.designs.TextField;
import bandwright.rules.heat.Allowed;
import bandwright.rules.heat.HeatKind;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.heat.HeatSources;
import bandwright.rules.heat.PressSetting;
import bandwright.rules.heat.PressSettings;
import bandwright.rules.orders.OrderField;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.Paper;
import bandwright.rules.paper.Printer;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import bandwright.rules.units.Rgb;
import bandwright.rules.units.Temperature;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The gift shop of the tests: a rulebook of invented figures that a test changes before it asks for {@link #rules()}. */
public final class TestShop {
    public final List<Blank> blanks = new ArrayList<>();
    public final List<HeatSource> sources = new ArrayList<>();
    public final List<PressSetting> settings = new ArrayList<>();
    public final List<Design> designs = new ArrayList<>();
    public final List<TextField> texts = new ArrayList<>();
    public final List<Paper> papers = new ArrayList<>();
    public final List<Printer> printers = new ArrayList<>();
    public List<String> shopPapers = List.of();
    public boolean artworkByName = true;
    public double cropNote = 0.15;
    public double cropHold = 0.35;
    public double colourNote = 5;

    /** A mug and a glass of 240 x 100 mm with a handle, a tumbler without one, a coaster; a clamp, an oven, a flat press. */
    public static TestShop ofTheTrust() {
        TestShop shop = new TestShop();
        shop.blanks.add(cylinder("MUG", Material.CERAMIC, 240, 100, 30, List.of("white mug")));
        shop.blanks.add(cylinder("GLASS", Material.GLASS, 240, 100, 30, List.of()));
        shop.blanks.add(cylinder("TUMBLER", Material.METAL, 230, 150, 0, List.of()));
        shop.blanks.add(blank(
                "COASTER",
                Material.WOOD,
                new Form.Flat(Length.mm(100), Length.mm(100), Outline.RECTANGLE),
                0,
                0,
                List.of(),
                1));
        shop.sources.add(source("clamp", HeatKind.MUG_PRESS, 1));
        shop.sources.add(source("oven", HeatKind.OVEN, 6));
        shop.sources.add(source("plate", HeatKind.FLAT_PRESS, 4));
        shop.settings.add(setting(Material.CERAMIC, HeatKind.MUG_PRESS, 190, 180, Allowed.YES));
        shop.settings.add(setting(Material.CERAMIC, HeatKind.OVEN, 195, 900, Allowed.YES));
        shop.settings.add(setting(Material.GLASS, HeatKind.MUG_PRESS, 0, 0, Allowed.NO));
        shop.settings.add(setting(Material.GLASS, HeatKind.OVEN, 180, 720, Allowed.YES));
        shop.settings.add(setting(Material.METAL, HeatKind.OVEN, 195, 600, Allowed.YES));
        shop.settings.add(setting(Material.WOOD, HeatKind.FLAT_PRESS, 190, 60, Allowed.YES));
        shop.designs.add(design("heron", "heron.png", Fit.COVER));
        shop.designs.add(design("tide table", "tides.png", Fit.CONTAIN));
        shop.papers.add(paper("pad", 220, Optional.of(Length.mm(300)), 5));
        shop.papers.add(paper("poster", 330, Optional.of(Length.mm(480)), 5));
        shop.printers.add(printer("desk", List.of("pad", "poster")));
        return shop;
    }

    public Rulebook rules() {
        return new SampleRules()
                .unit(LengthUnit.MM)
                .shopPapers(shopPapers)
                .crop(cropNote, cropHold)
                .colourNote(colourNote)
                .artworkByName(artworkByName)
                .blanks(blanks)
                .sources(sources)
                .settings(settings)
                .papers(papers)
                .printers(printers)
                .designs(designs, texts)
                .rules();
    }

    public Blank blank(String sku) {
        return new Blanks(blanks).find(sku).orElseThrow();
    }

    public HeatSource source(String id) {
        return new HeatSources(sources).find(id).orElseThrow();
    }

    public Design design(String name) {
        return new Designs(designs).variants(name).get(0);
    }

    public PressSetting setting(String sku, String source) {
        return new PressSettings(settings)
                .find(blank(sku), source(source).kind())
                .orElseThrow();
    }

    /** A line that is matched to those, whatever match would say. */
    public MatchedLine matched(OrderLine line, String sku, String source, Design design, ArtworkFile artwork) {
        return new MatchedLine(
                line,
                blank(sku),
                source(source),
                setting(sku, source),
                design,
                List.of(artwork),
                Piece.alike(line.quantity(), new TreeMap<>()));
    }

    public static Blank cylinder(
            String sku, Material material, double around, double height, double handle, List<String> aliases) {
        Form form = new Form.Cylinder(Length.mm(around), Length.mm(height));
        return blank(sku, material, form, handle, 0, aliases, 1);
    }

    public static Blank blank(
            String sku,
            Material material,
            Form form,
            double handle,
            double overlap,
            List<String> aliases,
            int ovenPlaces) {
        return SampleBlank.of(sku, form)
                .material(material)
                .aliases(aliases)
                .handle(handle)
                .overlap(overlap)
                .ovenPlaces(ovenPlaces)
                .blank();
    }

    public static HeatSource source(String id, HeatKind kind, int piecesPerLoad) {
        return source(id, kind, piecesPerLoad, 600, Optional.empty());
    }

    public static HeatSource source(
            String id, HeatKind kind, int piecesPerLoad, int warmUpSeconds, Optional<Length> maxBandHeight) {
        return SampleHeat.of(id, kind)
                .name("The " + id)
                .clearance(Length.mm(5))
                .maxBandHeight(maxBandHeight)
                .piecesPerLoad(piecesPerLoad)
                .seconds(warmUpSeconds, 20, 10)
                .source();
    }

    public static PressSetting setting(Material material, HeatKind kind, double celsius, int seconds, Allowed allowed) {
        Optional<Temperature> heat = celsius > 0 ? Optional.of(Temperature.celsius(celsius)) : Optional.empty();
        return SampleHeat.setting(material, kind, heat, seconds, allowed);
    }

    public static Design design(String name, String artwork, Fit fit) {
        return design(name, artwork, fit, Placement.ALL_ROUND, 50, 50, Optional.empty());
    }

    public static Design design(
            String name, String artwork, Fit fit, Placement placement, double x, double y, Optional<Rgb> background) {
        return new Design(name, artwork, Optional.empty(), placement, fit, x, y, background, "");
    }

    public static Paper paper(String id, double width, Optional<Length> height, double margin) {
        return SamplePaper.of(id, id, Length.mm(width), height, Length.mm(margin), Optional.empty());
    }

    public static Printer printer(String id, List<String> papers) {
        return SamplePaper.printer(id, papers, MirrorBy.FILE, 1, 1);
    }

    public static ArtworkFile artwork(String name, int width, int height) {
        return SampleUnit.artwork(name, width, height);
    }

    public static OrderLine line(String order, String sku, String design, int quantity) {
        return line("", order, "1", sku, design, quantity, "", Optional.empty());
    }

    public static OrderLine line(
            String site,
            String order,
            String line,
            String sku,
            String design,
            int quantity,
            String wish,
            Optional<LocalDate> shipBy) {
        Header header = new Header(List.of("Order", "SKU", "Artwork"), columns());
        Row row = new Row(new From("weekend.csv", Optional.empty(), 2), header, List.of());
        return new OrderLine(
                row,
                site,
                order,
                line,
                Optional.empty(),
                shipBy,
                quantity,
                List.of(Item.own(sku, design)),
                Wording.NONE,
                wish,
                false,
                Optional.empty());
    }

    private static Map<OrderField, Integer> columns() {
        return Map.of(OrderField.ORDER, 0, OrderField.SKU, 1, OrderField.DESIGN, 2);
    }
}
