package bandwright.rules.paper;

import bandwright.rules.Shop;
import bandwright.rules.units.Length;

/**
 * The label flag of a transfer: paper that hangs at mid-height on one end of the picture, beyond the cut line, and is
 * torn off before pressing. All lengths are counted from the picture's end unless said.
 *
 * @param border from the picture to the cut line
 * @param depth of the flag's paper, from the cut line outwards
 * @param height of the flag's paper, along the picture's end
 * @param inset how far ink on the flag keeps from the flag's own edges, so that it keeps trim_gap from every picture
 */
public record FlagLaw(Length border, Length depth, Length height, Length inset) {
    /** Ink must get at least this much depth inside the paper's margins, or a code on it could not be read. [J] */
    private static final Length LEAST_INK = Length.mm(8);

    public static FlagLaw of(Shop shop) {
        return new FlagLaw(
                shop.trimBorder(),
                shop.flagDepth(),
                shop.flagHeight(),
                shop.trimGap().minus(shop.trimBorder()).atLeast(Length.ZERO));
    }

    public boolean hasFlag() {
        return depth.isPositive() && height.isPositive();
    }

    /** From the picture's end to the outer end of the flag's paper. */
    public Length reach() {
        return hasFlag() ? border.plus(depth) : Length.ZERO;
    }

    /** From the picture's end to where ink must still be inside the paper's margins; zero where a flag has no room for ink. */
    public Length inkReach() {
        if (!hasFlag()) {
            return Length.ZERO;
        }
        Length most = depth.minus(inset.times(2));
        return most.isPositive() ? border.plus(inset).plus(LEAST_INK.atMost(most)) : Length.ZERO;
    }
}
