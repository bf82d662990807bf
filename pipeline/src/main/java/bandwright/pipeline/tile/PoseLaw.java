package bandwright.pipeline.tile;

import bandwright.rules.Shop;
import bandwright.rules.paper.FlagLaw;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Length;

/**
 * Where a picture and its flag may lie on one room's paper. A flag hangs on the right end of the flipped picture, so
 * the turn decides the side: 0 right, 90 up, 180 left, 270 down.
 */
record PoseLaw(PaperRoom room, FlagLaw law, Length trimGap) {
    static PoseLaw of(PaperRoom room, Shop shop) {
        return new PoseLaw(room, FlagLaw.of(shop), shop.trimGap());
    }

    boolean hasFlag() {
        return law.hasFlag();
    }

    PoseLaw withoutFlag() {
        FlagLaw none = new FlagLaw(law.border(), Length.ZERO, Length.ZERO, law.inset());
        return new PoseLaw(room, none, trimGap);
    }

    long gap() {
        return trimGap.nanometres();
    }

    long fieldWidth() {
        return room.inside().width().nanometres() + gap();
    }

    long fieldHeight() {
        return room.inside().height().nanometres() + gap();
    }

    /** The flag's paper for a picture of that size on the paper, from the picture's lower-left corner. */
    Span paper(Rotation turn, long across, long along) {
        return strip(turn, across, along, law.border().nanometres(), law.reach().nanometres(), 0);
    }

    /** What of the flag must lie inside the margins: ink must reach that far, and all along its height. */
    private Span ink(Rotation turn, long across, long along) {
        return strip(
                turn, across, along, 0, law.inkReach().nanometres(), law.inset().nanometres());
    }

    private Span strip(Rotation turn, long across, long along, long from, long to, long inset) {
        long high = law.height().nanometres();
        long end = turn.swapsSides() ? across : along;
        long low = Math.floorDiv(end - high, 2) + inset;
        long top = Math.max(low, low + high - 2 * inset);
        return switch (turn) {
            case R0 -> new Span(across + from, low, across + to, top);
            case R90 -> new Span(low, along + from, top, along + to);
            case R180 -> new Span(-to, low, -from, top);
            case R270 -> new Span(low, -to, top, -from);
        };
    }

    /**
     * What the flag takes of the field. A picture takes its box and a gap to the right and above; so the flag's paper
     * F, which must keep a border b from pictures, takes from F + gap - s to F + s. With s = b that is exact; s is at
     * least half the gap, or two flags could overlap.
     */
    Span taken(Rotation turn, long across, long along) {
        if (!hasFlag()) {
            return Span.NONE;
        }
        Span paper = paper(turn, across, along);
        long s = Math.max(law.border().nanometres(), (gap() + 1) / 2);
        return new Span(paper.x0() + gap() - s, paper.y0() + gap() - s, paper.x1() + s, paper.y1() + s);
    }

    /** Where the picture's lower-left corner may lie; upside down where nowhere. */
    Span corner(Rotation turn, long across, long along) {
        Span picture = new Span(0, 0, across, along);
        long right = room.inside().width().nanometres();
        long top = room.inside().height().nanometres();
        Span inside = new Span(0, 0, right, top);
        Span bounds = within(inside, picture, inside);
        if (!hasFlag()) {
            return bounds;
        }
        long left = room.page().x().minus(room.inside().x()).nanometres();
        long bottom = room.page().y().minus(room.inside().y()).nanometres();
        Span page = new Span(
                left,
                bottom,
                left + room.page().width().nanometres(),
                bottom + room.page().height().nanometres());
        bounds = within(page, paper(turn, across, along), bounds);
        return within(inside, ink(turn, across, along), bounds);
    }

    private static Span within(Span room, Span part, Span bounds) {
        return new Span(
                Math.max(bounds.x0(), room.x0() - part.x0()),
                Math.max(bounds.y0(), room.y0() - part.y0()),
                Math.min(bounds.x1(), room.x1() - part.x1()),
                Math.min(bounds.y1(), room.y1() - part.y1()));
    }
}
