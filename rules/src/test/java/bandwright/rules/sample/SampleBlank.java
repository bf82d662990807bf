package bandwright.rules.sample;

import bandwright.rules.blanks.Backing;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Finish;
import bandwright.rules.blanks.Form;
import bandwright.rules.blanks.Material;
import bandwright.rules.blanks.Outline;
import bandwright.rules.table.Evidence;
import bandwright.rules.units.Length;
import bandwright.rules.units.Rgb;
import java.util.List;
import java.util.Optional;

/** A blank for a test: white gloss ceramic with nothing special, but for what the test says. */
public final class SampleBlank {
    private final Form form;
    private String sku = "SAMPLE";
    private Material material = Material.CERAMIC;
    private Finish finish = Finish.GLOSS;
    private Length top = Length.ZERO;
    private Length bottom = Length.ZERO;
    private Length side = Length.ZERO;
    private Length handle = Length.ZERO;
    private Length overlap = Length.ZERO;
    private Length bleedTop = Length.ZERO;
    private Length bleedBottom = Length.ZERO;
    private List<String> parts = List.of();
    private List<String> heatSources = List.of();
    private Rgb baseColour = Rgb.WHITE;
    private Optional<Rgb> hotColour = Optional.empty();
    private Backing backing = Backing.OPAQUE;

    private SampleBlank(Form form) {
        this.form = form;
    }

    public static SampleBlank cylinder(Length circumference, Length height) {
        return new SampleBlank(new Form.Cylinder(circumference, height));
    }

    /** A cone by its diameters in mm. */
    public static SampleBlank cone(double rim, double foot, double height) {
        return new SampleBlank(new Form.Cone(Length.mm(Math.PI * rim), Length.mm(foot), Length.mm(height)));
    }

    public static SampleBlank flat(Length width, Length height) {
        return new SampleBlank(new Form.Flat(width, height, Outline.RECTANGLE));
    }

    public SampleBlank sku(String name) {
        sku = name;
        return this;
    }

    public SampleBlank of(Material wall) {
        material = wall;
        return this;
    }

    public SampleBlank finish(Finish look) {
        finish = look;
        return this;
    }

    public SampleBlank margins(Length atTop, Length atBottom) {
        top = atTop;
        bottom = atBottom;
        return this;
    }

    public SampleBlank sideMargin(Length atSides) {
        side = atSides;
        return this;
    }

    public SampleBlank handle(Length width) {
        handle = width;
        return this;
    }

    public SampleBlank overlap(Length atSeam) {
        overlap = atSeam;
        return this;
    }

    public SampleBlank bleeds(Length atTop, Length atBottom) {
        bleedTop = atTop;
        bleedBottom = atBottom;
        return this;
    }

    public SampleBlank parts(String... names) {
        parts = List.of(names);
        return this;
    }

    public SampleBlank heatSources(String... ids) {
        heatSources = List.of(ids);
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

    public SampleBlank backing(Backing behind) {
        backing = behind;
        return this;
    }

    public Blank blank() {
        return new Blank(
                sku,
                List.of(),
                "a sample",
                material,
                form,
                top,
                bottom,
                side,
                handle,
                overlap,
                bleedTop,
                bleedBottom,
                baseColour,
                hotColour,
                Optional.empty(),
                Optional.empty(),
                finish,
                backing,
                parts,
                heatSources,
                1,
                "",
                Optional.empty(),
                "",
                Evidence.FROM_MEMORY,
                "");
    }
}
