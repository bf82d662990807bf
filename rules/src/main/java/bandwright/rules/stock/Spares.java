package bandwright.rules.stock;

import bandwright.rules.spoilage.Spoilage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How many spare blanks to carry to the press, so that 19 days out of 20 nobody walks back to the shelf. 40 pieces at a
 * spoil rate of 3 %: 3 spares, as at least 40 of 43 turn out good with a probability of 96 %, and of 42 only with 87 %.
 */
public final class Spares {
    /** The share of days on which the spares shall do. [J] */
    private static final double ENOUGH = 0.95;
    /** Above so many spoiled ones several lots are no longer worked out together: each gets spares of its own. */
    private static final int TOGETHER = 20_000;

    /**
     * Pieces of one blank that are spoiled by one law: those of one heat source.
     *
     * @param pieces good ones that are wanted
     */
    public record Lot(int pieces, Spoilage spoilage) {
        public Lot {
            if (pieces < 0) {
                throw new IllegalArgumentException(pieces + " pieces");
            }
        }
    }

    private Spares() {}

    /**
     * The smallest s with P(at least n good of n + s) >= 95 %: where the probabilities of 0, 1, 2 .. spoiled ones before
     * the n-th good one come to 95 %. Lots of several heat sources share their spares: the spoiled ones of all together
     * are as probable as all ways of sharing them among the lots (a convolution, as the lots know nothing of each other).
     */
    public static int of(List<Lot> lots) {
        List<Lot> apart = apart(lots);
        if (apart.size() == 1) {
            return alone(apart.get(0));
        }
        return apart.isEmpty() ? 0 : together(apart);
    }

    /** Lots that only the shop's word speaks about are one lot if it says the same of them. */
    private static List<Lot> apart(List<Lot> lots) {
        Map<Spoilage, Integer> said = new LinkedHashMap<>();
        List<Lot> apart = new ArrayList<>();
        for (Lot lot : lots) {
            if (lot.pieces() > 0 && lot.spoilage().isLearnt()) {
                apart.add(lot);
            } else if (lot.pieces() > 0) {
                said.merge(lot.spoilage(), lot.pieces(), Integer::sum);
            }
        }
        said.forEach((spoilage, pieces) -> apart.add(new Lot(pieces, spoilage)));
        return apart;
    }

    private static int alone(Lot lot) {
        Spoiled spoiled = new Spoiled(lot);
        double sum = spoiled.next();
        int spares = 0;
        while (sum < ENOUGH) {
            sum += spoiled.next();
            spares++;
        }
        return spares;
    }

    private static int together(List<Lot> lots) {
        int most = lots.stream().mapToInt(Spares::alone).sum();
        if (most > TOGETHER) {
            return most;
        }
        for (int length = most + 1; ; length *= 2) { // the lots' own spares together nearly always do
            double[] all = {1};
            for (Lot lot : lots) {
                all = with(all, lot, length);
            }
            double sum = 0;
            for (int spares = 0; spares < length; spares++) {
                sum += all[spares];
                if (sum >= ENOUGH) {
                    return spares;
                }
            }
        }
    }

    private static double[] with(double[] some, Lot lot, int length) {
        double[] all = new double[length];
        Spoiled spoiled = new Spoiled(lot);
        for (int k = 0; k < length; k++) {
            double probability = spoiled.next();
            for (int i = 0; i < some.length && i + k < length; i++) {
                all[i + k] += some[i] * probability;
            }
        }
        return all;
    }

    /** The probabilities of 0, 1, 2 .. spoiled pieces before the last good one, in turn. */
    private static final class Spoiled {
        private final Lot lot;
        private int count = -1;
        private double log;

        Spoiled(Lot lot) {
            this.lot = lot;
        }

        double next() {
            count++;
            // As logarithms: no spoiled one among many pieces is less probable than a double can hold.
            log = count == 0
                    ? lot.spoilage().logNoneSpoiled(lot.pieces())
                    : log + StrictMath.log(lot.spoilage().step(lot.pieces(), count)); // log 0 is minus infinity: exp 0
            return StrictMath.exp(log);
        }
    }
}
