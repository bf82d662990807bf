package bandwright.rules.heat;

import bandwright.rules.table.Word;

/** A kind of heat source, and what it takes and how a load fills it. */
public enum HeatKind implements Word {
    MUG_PRESS("mug press", true, false, false),
    TUMBLER_PRESS("tumbler press", true, false, false),
    OVEN("oven", true, true, true),
    FLAT_PRESS("flat press", false, true, false);

    private final String word;
    private final boolean takesRound;
    private final boolean takesFlat;
    private final boolean fillsByPlaces;

    HeatKind(String word, boolean takesRound, boolean takesFlat, boolean fillsByPlaces) {
        this.word = word;
        this.takesRound = takesRound;
        this.takesFlat = takesFlat;
        this.fillsByPlaces = fillsByPlaces;
    }

    @Override
    public String word() {
        return word;
    }

    /** Whether a cylinder or cone can go in. */
    public boolean takesRound() {
        return takesRound;
    }

    /** Whether a flat blank can go in. */
    public boolean takesFlat() {
        return takesFlat;
    }

    /** Whether a piece counts by the oven places of its blank; elsewhere each piece counts one. */
    public boolean fillsByPlaces() {
        return fillsByPlaces;
    }

    /** Whether a wall that leans makes the picture uneven here, so that an empty max_taper still means a limit. */
    public boolean limitsTaper() {
        return takesRound && !takesFlat;
    }
}
