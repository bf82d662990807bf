package bandwright.rules.paper;

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
}
