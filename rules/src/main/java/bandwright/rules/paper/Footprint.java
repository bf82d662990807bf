package bandwright.rules.paper;

import bandwright.rules.blanks.Sector;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.Optional;

/**
 * What a transfer takes of a paper: its picture's box, flipped and upright with its lower-left corner at the origin, and
 * boxes of its label flag, which hangs at mid-height on the right end. On a cone that end leans, and the flag with it.
 *
 * @param flag the flag's paper; empty where the shop has none, or it has no room
 * @param ink where the flag's ink must lie inside the paper's margins
 */
public record Footprint(Box picture, Optional<Box> flag, Optional<Box> ink) {
    /** Of a picture that is printed straight. */
    public static Footprint straight(Length width, Length height, FlagLaw law) {
        Box picture = Box.of(width, height);
        if (!law.hasFlag()) {
            return new Footprint(picture, Optional.empty(), Optional.empty());
        }
        Length low = floorHalf(height.minus(law.height()));
        Box paper = new Box(width.plus(law.border()), low, law.depth(), law.height());
        Length high = law.height().minus(law.inset().times(2)).atLeast(Length.ZERO);
        Box ink = new Box(width, low.plus(law.inset()), law.inkReach(), high);
        return new Footprint(picture, Optional.of(paper), Optional.of(ink));
    }

    /** Of a picture that is bent for a cone; without a flag where it would lie on the picture's other end. */
    public static Footprint bent(Sector sector, FlagLaw law) {
        if (!law.hasFlag() || !LeaningFlag.hasRoom(sector, law)) {
            return new Footprint(sector.box(), Optional.empty(), Optional.empty());
        }
        LeaningFlag flag = LeaningFlag.of(sector, law);
        return new Footprint(
                sector.box(), Optional.of(flag.bounds(Length.ZERO)), Optional.of(flag.bounds(law.inset())));
    }

    /** The room inside the margins that it takes: its picture and its flag's ink, from the origin. */
    public Box inked() {
        Box other = ink.orElse(picture);
        Length left = picture.x().atMost(other.x());
        Length low = picture.y().atMost(other.y());
        return Box.of(
                picture.right().atLeast(other.right()).minus(left),
                picture.top().atLeast(other.top()).minus(low));
    }

    /** Without its flag. */
    public Footprint bare() {
        return new Footprint(picture, Optional.empty(), Optional.empty());
    }

    /** The same turned counter-clockwise by quarters, the picture's corner at the origin again. */
    public Footprint turned(int quarters) {
        Footprint turned = this;
        for (int i = 0; i < quarters; i++) {
            Length height = turned.picture.height();
            turned = new Footprint(
                    quarter(turned.picture, height),
                    turned.flag.map(box -> quarter(box, height)),
                    turned.ink.map(box -> quarter(box, height)));
        }
        return turned;
    }

    private static Box quarter(Box box, Length pictureHeight) {
        return new Box(pictureHeight.minus(box.top()), box.x(), box.height(), box.width());
    }

    private static Length floorHalf(Length length) {
        return new Length(Math.floorDiv(length.nanometres(), 2));
    }

    /**
     * Where the picture's lower-left corner may lie on a paper: the picture and the flag's ink inside the margins, the
     * flag's paper on the page. Empty where nowhere.
     */
    public Optional<Box> corners(PaperRoom room) {
        Range across = new Range(room.inside().x(), room.inside().right());
        Range along = new Range(room.inside().y(), room.inside().top());
        Range x = across.lessened(picture.x(), picture.right());
        Range y = along.lessened(picture.y(), picture.top());
        if (flag.isPresent() && ink.isPresent()) {
            Range pageX = new Range(room.page().x(), room.page().right());
            Range pageY = new Range(room.page().y(), room.page().top());
            x = x.shared(pageX.lessened(flag.get().x(), flag.get().right()))
                    .shared(across.lessened(ink.get().x(), ink.get().right()));
            y = y.shared(pageY.lessened(flag.get().y(), flag.get().top()))
                    .shared(along.lessened(ink.get().y(), ink.get().top()));
        }
        boolean isNowhere = x.from.longerThan(x.to) || y.from.longerThan(y.to);
        return isNowhere
                ? Optional.empty()
                : Optional.of(new Box(x.from, y.from, x.to.minus(x.from), y.to.minus(y.from)));
    }

    /** From one place to another in one direction; upside down where there is none. */
    private record Range(Length from, Length to) {
        /** Where a thing may stand that reaches from one place to another of its own. */
        Range lessened(Length low, Length high) {
            return new Range(from.minus(low), to.minus(high));
        }

        Range shared(Range other) {
            return new Range(from.atLeast(other.from), to.atMost(other.to));
        }
    }
}
