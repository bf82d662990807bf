package bandwright.rules.blanks;

import bandwright.rules.heat.HeatSource;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import bandwright.rules.units.TapeText;
import bandwright.rules.words.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * The band's arithmetic written out, so that nobody has to believe it: on a mug of 10 1/2 in round with a handle of 1 1/8
 * in and 1/2 in of clearance, {@code 10 1/2 - 1 1/8 - 2 x 1/2 = 8 3/8 in (212.73 mm)}. Inches only where every figure
 * stands on an inch tape, else millimetres; what is rounded is joined by "is about".
 *
 * @param around along the wall
 * @param up up the wall
 * @param more how a cone is laid flat, what a heat source cuts off, what overlap and bleeds add; a sentence each
 */
public record BandSum(String around, String up, List<String> more) {
    public BandSum {
        more = List.copyOf(more);
    }

    /** The sums for a blank on a heat source; of the shop's unit where its figures are exact in it. */
    public static BandSum of(Blank blank, HeatSource source, Band band, LengthUnit unit) {
        List<String> more = new ArrayList<>();
        String around;
        String up;
        if (blank.form() instanceof Form.Cone cone) {
            ConeWall wall = ConeWall.of(cone);
            up = new Sum(unit, Length.mm(wall.slant()))
                    .less(1, blank.topMargin())
                    .less(1, blank.bottomMargin())
                    .text(wanted(band, BandLimit.Column.MAX_BAND_HEIGHT, band.up()));
            around = coneAround(blank, source, band, wall, unit);
            more.add(Words.say(
                    "band.cone-slant",
                    mm(cone.height()),
                    mm(cone.rimDiameter()),
                    mm(cone.footDiameter()),
                    mm(Length.mm(wall.slant()))));
            band.pattern().ifPresent(pattern -> more.add(arcs(band, pattern)));
        } else if (blank.form() instanceof Form.Flat flat) {
            around = new Sum(unit, flat.width())
                    .less(2, blank.sideMargin())
                    .text(wanted(band, BandLimit.Column.MAX_BAND_WIDTH, band.around()));
            up = upOf(unit, flat.height(), blank, band);
        } else {
            Form.Cylinder cylinder = (Form.Cylinder) blank.form();
            Sum sum = new Sum(unit, cylinder.circumference());
            if (blank.hasHandle()) {
                sum = sum.less(1, blank.handleWidth()).less(2, source.handleClearance());
            }
            around = sum.text(wanted(band, BandLimit.Column.MAX_BAND_WIDTH, band.around()));
            up = upOf(unit, cylinder.height(), blank, band);
        }
        band.limitedBy().forEach(limit -> more.add(limited(limit)));
        added(more, band, unit);
        return new BandSum(around, up, more);
    }

    private static String upOf(LengthUnit unit, Length height, Blank blank, Band band) {
        return new Sum(unit, height)
                .less(1, blank.topMargin())
                .less(1, blank.bottomMargin())
                .text(wanted(band, BandLimit.Column.MAX_BAND_HEIGHT, band.up()));
    }

    /** What the band would be if the heat source did not cut it. */
    private static Length wanted(Band band, BandLimit.Column column, Length given) {
        return band.limitedBy().stream()
                .filter(limit -> limit.column() == column)
                .map(BandLimit::wanted)
                .findFirst()
                .orElse(given);
    }

    private static String coneAround(Blank blank, HeatSource source, Band band, ConeWall wall, LengthUnit unit) {
        Length around = wanted(band, BandLimit.Column.MAX_BAND_WIDTH, band.around());
        String result = mm(around) + " " + LengthUnit.MM.word() + Sum.also(around, LengthUnit.MM, unit);
        return blank.hasHandle()
                ? Words.say("band.cone-around", mm(band.circumference()), share(blank, source, band, wall), result)
                : Words.say("band.cone-round", result);
    }

    private static String share(Blank blank, HeatSource source, Band band, ConeWall wall) {
        double v1 = blank.topMargin().mm();
        double narrowest = Math.PI
                * Math.min(wall.diameter(v1), wall.diameter(v1 + band.up().mm()));
        return Words.say("band.cone-share", mm(BandLaw.handleGap(blank, source)), mm(Length.mm(narrowest)));
    }

    private static String arcs(Band band, ConePattern pattern) {
        Length rim = Length.mm(pattern.rimRadius().mm() * pattern.sweepRadians());
        Length foot = Length.mm(pattern.footRadius().mm() * pattern.sweepRadians());
        Sector sector = Sector.of(band, pattern);
        return Words.say(
                "band.cone-arcs",
                mm(rim),
                mm(foot),
                mm(sector.box().width()),
                mm(sector.box().height()));
    }

    private static String limited(BandLimit limit) {
        return Words.say("band.limited", limit.column().key(), mm(limit.given()), mm(limit.wanted()));
    }

    private static void added(List<String> more, Band band, LengthUnit unit) {
        if (band.overlap().isPositive()) {
            more.add(Words.say(
                    "band.overlap",
                    new Sum(unit, band.around()).less(-1, band.overlap()).text(band.printWidth())));
        }
        if (band.bleedTop().isPositive() || band.bleedBottom().isPositive()) {
            more.add(Words.say(
                    "band.bleeds",
                    new Sum(unit, band.up())
                            .less(-1, band.bleedTop())
                            .less(-1, band.bleedBottom())
                            .text(band.printHeight())));
        }
    }

    private static String mm(Length length) {
        return TapeText.of(length, LengthUnit.MM);
    }

    /** A first length less others, each so many times; a negative one, or a negative count, is added. */
    private record Sum(LengthUnit unit, Length first, List<Part> parts) {
        private record Part(int times, Length length) {}

        Sum(LengthUnit unit, Length first) {
            this(unit, first, List.of());
        }

        Sum less(int times, Length length) {
            if (length.isZero()) {
                return this;
            }
            List<Part> all = new ArrayList<>(parts);
            all.add(new Part(times, length));
            return new Sum(unit, first, all);
        }

        String text(Length result) {
            boolean isOnTape = TapeText.isOnAnInchTape(first)
                    && parts.stream().allMatch(part -> TapeText.isOnAnInchTape(part.length));
            LengthUnit in = unit == LengthUnit.IN && !isOnTape ? LengthUnit.MM : unit;
            StringBuilder text = new StringBuilder(TapeText.of(first, in));
            BigDecimal sum = TapeText.value(first, in);
            for (Part part : parts) {
                boolean isAdded = part.length.isNegative() != part.times < 0;
                Length size = part.length.isNegative() ? part.length.negated() : part.length;
                int times = Math.abs(part.times);
                text.append(isAdded ? " + " : " - ")
                        .append(times == 1 ? "" : times + " x ")
                        .append(TapeText.of(size, in));
                BigDecimal product = TapeText.value(size, in).multiply(BigDecimal.valueOf(times));
                sum = isAdded ? sum.add(product) : sum.subtract(product);
            }
            boolean isExact = sum.compareTo(TapeText.value(result, in)) == 0;
            String equals = Words.say(isExact ? "band.equals" : "band.is-about");
            String printed = TapeText.of(result, in) + " " + in.word() + also(result, in, unit);
            return parts.isEmpty() ? printed : text + " " + equals + " " + printed;
        }

        /** The same for whoever reads the other unit. */
        static String also(Length result, LengthUnit in, LengthUnit unit) {
            if (in == LengthUnit.IN) {
                return Words.say("band.also", result.mm2().toPlainString() + " mm");
            }
            if (unit == LengthUnit.IN) {
                BigDecimal inches = BigDecimal.valueOf(result.inches()).setScale(2, RoundingMode.HALF_UP);
                return Words.say("band.also", inches.toPlainString() + " in");
            }
            return "";
        }
    }
}
