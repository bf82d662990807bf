package bandwright.rules.paper;

import bandwright.rules.units.Length;
import java.util.stream.IntStream;

/**
 * Whether a transfer can lie on a paper, straight or turned by a quarter. A picture of 212.73 x 95.25 mm with a flag of
 * 14 mm goes across a sheet of 215.9 mm only if picture and flag's ink stay inside its margins: they do not, but turned
 * up the page's 279.4 mm they do.
 */
public final class PaperLaw {
    private PaperLaw() {}

    /** Whether a sheet of that room takes the transfer with its flag, turned by any quarter. */
    public static boolean takes(PaperRoom room, Footprint transfer) {
        return IntStream.range(0, 4)
                .anyMatch(quarters -> transfer.turned(quarters).corners(room).isPresent());
    }

    /** Whether a roll as wide as that, which is cut where the picture ends, takes the transfer. */
    public static boolean rollTakes(Paper roll, Length width, Length height, FlagLaw flag) {
        Extent across = new Extent(roll.width(), roll.marginLeft(), roll.width().minus(roll.marginRight()));
        return across.takesEnds(width, flag) || across.takesSides(height, flag);
    }

    /** One direction of a page: it reaches from 0 to {@code page}, ink may stand from {@code from} to {@code to}. */
    private record Extent(Length page, Length from, Length to) {
        /** Whether the picture and the flag beyond one of its ends lie in this direction. */
        boolean takesEnds(Length width, FlagLaw flag) {
            Length room = to.minus(from);
            boolean isInked = !width.plus(flag.inkReach()).longerThan(room);
            // The picture stands at one end of the room; the flag's paper reaches over the margin at the other.
            boolean isOnPage = !from.plus(width).plus(flag.reach()).longerThan(page)
                    || !flag.reach().longerThan(to.minus(width));
            return isInked && isOnPage;
        }

        /** Whether the picture lies in this direction, and the flag's ink, which may stand out on both of its sides. */
        boolean takesSides(Length height, FlagLaw flag) {
            Length ink = flag.hasFlag() ? flag.height().minus(flag.inset().times(2)) : Length.ZERO;
            return !height.atLeast(ink).longerThan(to.minus(from));
        }
    }
}
