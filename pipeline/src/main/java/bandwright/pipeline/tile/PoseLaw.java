package bandwright.pipeline.tile;

import bandwright.rules.Shop;
import bandwright.rules.paper.FlagLaw;
import bandwright.rules.paper.Footprint;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.Optional;

/** What a picture and its flag take of the field, and where they may lie on one room's paper. */
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

    /** Of a flipped picture, turned, with its flag. */
    Footprint footprint(FlatPattern pattern, Rotation turn) {
        return pattern.footprint(law).turned(turn.degrees() / 90);
    }

    /**
     * What the flag takes of the field. A picture takes its box and a gap to the right and above; so the flag's paper
     * F, which must keep a border b from pictures, takes from F + gap - s to F + s. With s = b that is exact; s is at
     * least half the gap, or two flags could overlap.
     */
    Span taken(Footprint turned) {
        if (turned.flag().isEmpty()) {
            return Span.NONE;
        }
        Box paper = turned.flag().get();
        long s = Math.max(law.border().nanometres(), (gap() + 1) / 2);
        return new Span(
                paper.x().nanometres() + gap() - s,
                paper.y().nanometres() + gap() - s,
                paper.right().nanometres() + s,
                paper.top().nanometres() + s);
    }

    /** Where the picture's lower-left corner may lie, counted from the inside's; empty where nowhere. */
    Optional<Span> corner(Footprint turned) {
        return turned.corners(room)
                .map(corners -> corners.shifted(
                        room.inside().x().negated(), room.inside().y().negated()))
                .map(Span::of);
    }
}
