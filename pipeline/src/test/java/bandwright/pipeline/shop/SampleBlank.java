package bandwright.pipeline.shop;

import bandwright.rules.blanks.Backing;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Finish;
import bandwright.rules.blanks.Form;
import bandwright.rules.blanks.Material;
import bandwright.rules.table.Evidence;
import bandwright.rules.units.Length;
import bandwright.rules.units.Rgb;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** A blank for a test: white gloss ceramic without a handle and without margins, but for what the test says. */
public final class SampleBlank {
    private final String sku;
    private final Form form;
    private String name;
    private Material material = Material.CERAMIC;
    private List<String> aliases = List.of();
    private Length handle = Length.ZERO;
    private Length overlap = Length.ZERO;
    private Length bleed = Length.ZERO;
    private int ovenPlaces = 1;
    private String shelf = "";
    private Optional<BigDecimal> cost = Optional.empty();
    private Rgb baseColour = Rgb.WHITE;
    private Optional<Rgb> hotColour = Optional.empty();
    private Finish finish = Finish.GLOSS;

    private SampleBlank(String sku, Form form) {
        this.sku = sku;
        this.form = form;
        this.name = sku;
    }

    public static SampleBlank of(String sku, Form form) {
        return new SampleBlank(sku, form);
    }

    public static SampleBlank cylinder(String sku, double aroundMm, double heightMm) {
        return of(sku, new Form.Cylinder(Length.mm(aroundMm), Length.mm(heightMm)));
    }

    public SampleBlank name(String words) {
        name = words;
        return this;
    }

    public SampleBlank material(Material wall) {
        material = wall;
        return this;
    }

    public SampleBlank aliases(List<String> names) {
        aliases = names;
        return this;
    }

    public SampleBlank handle(double mm) {
        handle = Length.mm(mm);
        return this;
    }

    public SampleBlank overlap(double mm) {
        overlap = Length.mm(mm);
        return this;
    }

    /** Past the rim and past the foot. */
    public SampleBlank bleed(double mm) {
        bleed = Length.mm(mm);
        return this;
    }

    public SampleBlank ovenPlaces(int places) {
        ovenPlaces = places;
        return this;
    }

    public SampleBlank shelf(String place) {
        shelf = place;
        return this;
    }

    public SampleBlank cost(Optional<BigDecimal> price) {
        cost = price;
        return this;
    }

    public SampleBlank baseColour(Rgb colour) {
        baseColour = colour;
        return this;
    }

    public SampleBlank hotColour(Rgb colour) {
        hotColour = Optional.of(colour);
        return this;
    }

    public SampleBlank finish(Finish look) {
        finish = look;
        return this;
    }

    public Blank blank() {
        return new Blank(
                sku,
                aliases,
                name,
                material,
                form,
                Length.ZERO,
                Length.ZERO,
                Length.ZERO,
                handle,
                overlap,
                bleed,
                bleed,
                baseColour,
                hotColour,
                Optional.empty(),
                Optional.empty(),
                finish,
                Backing.OPAQUE,
                List.of(),
                List.of(),
                ovenPlaces,
                shelf,
                cost,
                "",
                Evidence.FROM_MEMORY,
                "");
    }
}
