package bandwright.rules.blanks;

import java.util.Optional;

/**
 * The outside of a round blank and where on it a printed picture comes to lie. Millimetres; heights are counted from the
 * table, angles in radians from the middle of what is seen, growing to the right.
 *
 * @param rimRadius at the rim
 * @param footRadius at the foot
 * @param topMargin down the wall from the rim to the band
 * @param printed the measures of what is printed
 */
public record Body(double rimRadius, double footRadius, double height, double topMargin, Printed printed) {
    /**
     * What is printed, in plain numbers, as they are asked for at every point of a view.
     *
     * @param round the way round half-way up the band
     */
    public record Printed(double round, double width, double height, double bleedTop) {
        static Printed of(Band band) {
            return new Printed(
                    band.circumference().mm(),
                    band.around().mm(),
                    band.printHeight().mm(),
                    band.bleedTop().mm());
        }
    }

    /** From where a blank is looked at; without a handle the seam stands where the handle would. */
    public enum From {
        HANDLE_LEFT,
        FRONT,
        HANDLE_RIGHT
    }

    /** The body of a round blank; a flat one has none. */
    public static Optional<Body> of(Blank blank, Band band) {
        double top = blank.topMargin().mm();
        if (blank.form() instanceof Form.Cylinder cylinder) {
            double radius = cylinder.circumference().mm() / 2 / Math.PI;
            return Optional.of(new Body(radius, radius, cylinder.height().mm(), top, Printed.of(band)));
        }
        if (blank.form() instanceof Form.Cone cone) {
            return Optional.of(new Body(
                    cone.rimDiameter().mm() / 2,
                    cone.footDiameter().mm() / 2,
                    cone.height().mm(),
                    top,
                    Printed.of(band)));
        }
        return Optional.empty();
    }

    public double radius(double y) {
        return footRadius + (rimRadius - footRadius) * y / height;
    }

    /**
     * How far from the left end of the printed picture a point lies that is seen under an angle; not a number
     * where nothing is printed. What is seen with the handle on the right is centred a quarter of the way round right of the band's
     * middle.
     */
    public double fromLeft(double angle, From from) {
        double round = printed.round();
        double width = printed.width();
        double middle = width / 2 + quarters(from) * round / 4;
        double gap = Math.max(0, round - width) / 2;
        double along = middle + angle / (2 * Math.PI) * round + gap;
        double u = along - Math.floor(along / round) * round - gap;
        return u >= 0 && u < width ? u : Double.NaN;
    }

    private static int quarters(From from) {
        return switch (from) {
            case HANDLE_LEFT -> -1;
            case FRONT -> 0;
            case HANDLE_RIGHT -> 1;
        };
    }

    /** How far from the top of the printed picture, its bleed counted, a height lies; not a number where
     * nothing is printed. */
    public double fromTop(double y) {
        double lean = rimRadius - footRadius;
        double slant = lean == 0 ? height : Math.sqrt(height * height + lean * lean);
        double down = slant * (height - y) / height - topMargin + printed.bleedTop();
        return down >= 0 && down < printed.height() ? down : Double.NaN;
    }
}
