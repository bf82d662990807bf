package bandwright.rules.colour;

import bandwright.rules.blanks.Backing;
import bandwright.rules.blanks.Blank;
import bandwright.rules.units.Rgb;
import java.util.List;

/**
 * A colour that stands behind the print of a blank, and when. An opaque mug has one; a colour-changing one is seen cold and
 * hot; through frosted glass one sees what stands behind it, and then what is in it.
 *
 * @param isJudged whether limits are held against it: the base that the picture is meant to be seen on
 * @param isSure whether one colour can stand for the base; on glitter, metal and frosted glass it stands for many
 */
public record SeenBase(When when, Rgb colour, boolean isJudged, boolean isSure) {
    /** A dark drink, as seen through glass. [J] */
    public static final Rgb DRINK = new Rgb(59, 34, 20);

    /** When it is seen. */
    public enum When {
        ALWAYS,
        COLD,
        HOT,
        EMPTY,
        FILLED
    }

    /** In the order in which they are shown. */
    public static List<SeenBase> of(Blank blank) {
        boolean isSure = isSure(blank);
        if (blank.hotColour().isPresent()) {
            return List.of(
                    new SeenBase(When.COLD, blank.baseColour(), false, isSure),
                    new SeenBase(When.HOT, blank.hotColour().get(), true, isSure));
        }
        if (blank.backing() == Backing.CLEAR) {
            return List.of(
                    new SeenBase(When.EMPTY, blank.baseColour(), true, isSure),
                    new SeenBase(When.FILLED, Overprint.on(DRINK).of(blank.baseColour()), false, false));
        }
        return List.of(new SeenBase(When.ALWAYS, blank.baseColour(), true, isSure));
    }

    /** The one that limits are held against: hot where it changes, else the blank's own colour. */
    public static SeenBase judged(Blank blank) {
        return of(blank).stream().filter(SeenBase::isJudged).findFirst().orElseThrow();
    }

    private static boolean isSure(Blank blank) {
        return blank.backing() == Backing.OPAQUE
                && switch (blank.finish()) {
                    case GLOSS, MATTE, COLOUR_CHANGING -> true;
                    case GLITTER, FROSTED, METALLIC -> false;
                };
    }

    public boolean isWhite() {
        return colour.equals(Rgb.WHITE);
    }
}
