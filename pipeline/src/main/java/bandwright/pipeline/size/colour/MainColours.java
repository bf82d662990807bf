package bandwright.pipeline.size.colour;

import bandwright.pipeline.size.colour.ColourShift.Lost;
import bandwright.pipeline.size.colour.Palette.Tint;
import bandwright.rules.colour.ColourDifference;
import bandwright.rules.colour.Overprint;
import bandwright.rules.units.Rgb;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The colours that a print is made of, white among them: a lamp is yellow, black and white. Each has a notable share of its
 * area. A yellow lamp on white paper is lost on a yellow mug.
 */
record MainColours(List<Tint> tints) {
    /** Less of the area is a detail whose loss nobody would be told of. [J] */
    private static final double NOTABLE = 0.03;

    /** Of two clearly different colours, by CIEDE2000. [J] */
    private static final double CLEAR = 20;

    /** Of two that are nearly one. [J] */
    private static final double NEARLY_ONE = 3;

    /** Colours with the same three higher bits a channel are taken together. */
    private static final int LOWER_BITS = 5;

    private static final class Group {
        private double mm2;
        private double red;
        private double green;
        private double blue;

        void add(Tint tint) {
            mm2 += tint.mm2();
            red += tint.mm2() * tint.colour().red();
            green += tint.mm2() * tint.colour().green();
            blue += tint.mm2() * tint.colour().blue();
        }

        Tint tint() {
            return new Tint(new Rgb(mean(red), mean(green), mean(blue)), mm2);
        }

        private int mean(double sum) {
            return (int) Math.round(sum / mm2);
        }
    }

    static MainColours of(Palette palette) {
        Map<Integer, Group> groups = new TreeMap<>();
        for (Tint tint : palette.inked()) {
            groups.computeIfAbsent(key(tint.colour()), any -> new Group()).add(tint);
        }
        List<Tint> all =
                new ArrayList<>(groups.values().stream().map(Group::tint).toList());
        all.add(new Tint(Rgb.WHITE, palette.bareMm2()));
        double least = NOTABLE * palette.mm2();
        return new MainColours(all.stream().filter(tint -> tint.mm2() >= least).toList());
    }

    private static int key(Rgb colour) {
        return (colour.red() >> LOWER_BITS << 6) | (colour.green() >> LOWER_BITS << 3) | (colour.blue() >> LOWER_BITS);
    }

    Optional<Lost> lost(Overprint onBase) {
        Optional<Lost> lost = Optional.empty();
        double most = CLEAR;
        for (int i = 0; i < tints.size(); i++) {
            for (int j = i + 1; j < tints.size(); j++) {
                Tint one = tints.get(i);
                Tint other = tints.get(j);
                double onWhite = ColourDifference.of(one.onWhite(), other.onWhite());
                if (onWhite > most && isNearlyOne(onBase, one, other)) {
                    most = onWhite;
                    lost = Optional.of(new Lost(one.colour(), other.colour()));
                }
            }
        }
        return lost;
    }

    private static boolean isNearlyOne(Overprint onBase, Tint one, Tint other) {
        return ColourDifference.of(onBase.lab(one.colour()), onBase.lab(other.colour())) < NEARLY_ONE;
    }
}
