package bandwright.pipeline.size;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.rules.designs.Design;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;

/**
 * Where a picture lies in a box, as CSS object-fit has it (CSS Images Module Level 3, section 5.5), and what that does
 * to it. 1200 x 800 pixels that cover a box of 200 x 100 mm lie 200 x 133.33 mm large; a quarter of them is cut off.
 *
 * @param place where the whole picture lies; under cover larger than the box
 * @param ppi pixels an inch as it lies, the smaller of both directions, rounded down
 * @param crop the share of the picture's area that is cut off
 * @param stretch the larger of the two scales by the smaller, less one
 * @param widest how much wider than measured it is printed on the larger arc of a cone; 1 where it is printed straight
 */
record PictureFit(Box place, int ppi, double crop, double stretch, double widest) {
    private static final long NANOMETRES_PER_INCH = 25_400_000;

    /** In a box that is printed straight. */
    static PictureFit of(Design design, ArtworkFile artwork, Box box) {
        return switch (design.fit()) {
            case CONTAIN -> contained(artwork, box);
            case COVER -> covering(artwork, box, design.cropCentreX(), design.cropCentreY());
            case FILL -> filling(artwork, box);
        };
    }

    /** The same on a cone, where the pixels of the box's larger arc are so many times as wide. */
    PictureFit widened(ArtworkFile artwork, double times) {
        double across = artwork.shownWidth()
                * (double) NANOMETRES_PER_INCH
                / (place.width().nanometres() * times);
        return new PictureFit(place, Math.min(ppi, (int) across), crop, stretch, times);
    }

    private static PictureFit contained(ArtworkFile artwork, Box box) {
        Sized sized = isWiderThan(box, artwork) ? byWidth(artwork, box) : byHeight(artwork, box);
        Length dx = box.width().minus(sized.width()).half();
        Length dy = box.height().minus(sized.height()).half();
        return new PictureFit(sized.at(box.x().plus(dx), box.y().plus(dy)), sized.ppi(), 0, 0, 1);
    }

    private static PictureFit covering(ArtworkFile artwork, Box box, double centreX, double centreY) {
        Sized sized = isWiderThan(box, artwork) ? byHeight(artwork, box) : byWidth(artwork, box);
        Length cutLeft = cutBefore(sized.width(), box.width(), centreX);
        // The centre is counted from the picture's upper edge, the box from its lower one.
        Length cutBelow = cutBefore(sized.height(), box.height(), 100 - centreY);
        Box place = sized.at(box.x().minus(cutLeft), box.y().minus(cutBelow));
        double ratio = scaleRatio(artwork, box);
        return new PictureFit(place, sized.ppi(), 1 - 1 / ratio, 0, 1);
    }

    private static PictureFit filling(ArtworkFile artwork, Box box) {
        int ppi = Math.min(ppi(artwork.shownWidth(), box.width()), ppi(artwork.shownHeight(), box.height()));
        return new PictureFit(box, ppi, 0, scaleRatio(artwork, box) - 1, 1);
    }

    /** What lies before a window that is centred at that percentage of the picture, then pushed inside it. */
    private static Length cutBefore(Length picture, Length window, double centre) {
        Length wanted = picture.times(centre / 100).minus(window.half());
        return wanted.atMost(picture.minus(window)).atLeast(Length.ZERO);
    }

    /** A picture scaled without distortion; the ppi is that of the side that was given, which is exact. */
    private record Sized(Length width, Length height, int ppi) {
        Box at(Length x, Length y) {
            return new Box(x, y, width, height);
        }
    }

    private static Sized byWidth(ArtworkFile artwork, Box box) {
        Length height = box.width().times((double) artwork.shownHeight() / artwork.shownWidth());
        return new Sized(box.width(), height, ppi(artwork.shownWidth(), box.width()));
    }

    private static Sized byHeight(ArtworkFile artwork, Box box) {
        Length width = box.height().times((double) artwork.shownWidth() / artwork.shownHeight());
        return new Sized(width, box.height(), ppi(artwork.shownHeight(), box.height()));
    }

    /** Whether the picture's sides stand in a larger ratio than the box's: compared crosswise, in whole numbers. */
    private static boolean isWiderThan(Box box, ArtworkFile artwork) {
        return artwork.shownWidth() * box.height().nanometres()
                >= artwork.shownHeight() * box.width().nanometres();
    }

    /** The larger by the smaller of the scales at which the picture's sides would be as long as the box's. */
    private static double scaleRatio(ArtworkFile artwork, Box box) {
        double across = box.width().mm() / artwork.shownWidth();
        double up = box.height().mm() / artwork.shownHeight();
        return Math.max(across, up) / Math.min(across, up);
    }

    private static int ppi(int pixels, Length length) {
        return Math.toIntExact(Math.min(Integer.MAX_VALUE, pixels * NANOMETRES_PER_INCH / length.nanometres()));
    }
}
