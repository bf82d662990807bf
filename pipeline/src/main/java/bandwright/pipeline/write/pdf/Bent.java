package bandwright.pipeline.write.pdf;

import bandwright.pipeline.type.Outline;
import bandwright.rules.blanks.Sector;
import bandwright.rules.units.Box;

/** Boxes and letters of a flat band as they are bent for a cone: true curves, no steps. */
public final class Bent {
    private Bent() {}

    /** A box of the flat band; its upper and lower side become arcs, its ends radial lines. */
    public static Outline outline(Box box, Sector sector) {
        return outline(Outline.of(box), sector);
    }

    /** Letters, or any other shape, of the flat band. */
    public static Outline outline(Outline flat, Sector sector) {
        return flat.bent(sector::x, sector::y);
    }
}
