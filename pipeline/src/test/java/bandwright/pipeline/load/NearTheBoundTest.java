package bandwright.pipeline.load;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.load.Work.Bank;
import bandwright.pipeline.load.Work.Chain;
import bandwright.pipeline.load.Work.Link;
import bandwright.rules.units.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * How far plans are from what is proven to be possible, on 50 days of 60 pieces for a clamp, a tumbler press and an oven.
 * Measured: with two people 39 plans meet the bound, the worst is 1.1 % above. With one person 36 are within 5 %, the worst
 * is 15.1 % above. On the four worst of another 200 such days a constraint solver gained no more than 0.4 to 2.2 % in half
 * a minute and proved nothing better than our bound, so that most of what is missing seems to be the bound's: it doesn't
 * know how the cycles of two presses must interlock for one pair of hands.
 */
class NearTheBoundTest {
    private static final int DAYS = 50;

    @Test
    void twoPeopleAreNeverFarFromIt() {
        double[] above = above(2);
        assertThat(share(above, 0.03)).isEqualTo(1);
        assertThat(share(above, 0)).isGreaterThanOrEqualTo(0.5);
    }

    @Test
    void onePersonIsMostlyNear() {
        double[] above = above(1);
        assertThat(share(above, 0.05)).isGreaterThanOrEqualTo(0.7);
        assertThat(share(above, 0.16)).isEqualTo(1);
    }

    private static double[] above(int people) {
        double[] above = new double[DAYS];
        for (int seed = 0; seed < DAYS; seed++) {
            Work work = day(seed, people);
            double bound = AtLeast.of(work);
            above[seed] = Search.best(work, 60_000).merit().end() / bound - 1;
            assertThat(above[seed]).as("seed %d", seed).isNotNegative();
        }
        return above;
    }

    private static double share(double[] above, double most) {
        int within = 0;
        for (double one : above) {
            within += one <= most ? 1 : 0;
        }
        return (double) within / above.length;
    }

    private static Work day(long seed, int people) {
        SplittableRandom random = new SplittableRandom(seed);
        int mugs = 18 + random.nextInt(24);
        int tumblers = (60 - mugs) * (30 + random.nextInt(40)) / 100;
        int glasses = 60 - mugs - tumblers;
        List<Chain> chains = new ArrayList<>();
        chains.add(once(0, 190, 40, 180, 20, (mugs + 1) / 2));
        chains.add(once(0, random.nextBoolean() ? 190 : 185, 40, 210, 20, mugs / 2));
        List<Span> turned = List.of(new Span(0, 45), new Span(120, 135), new Span(210, 235));
        chains.add(new Chain(1, Temperature.celsius(180), turned, 235, links(tumblers)));
        chains.add(once(2, 195, 180, 900, 240, (glasses / 2 + 7) / 8));
        chains.add(once(2, 180, 180, 720, 240, (glasses - glasses / 2 + 7) / 8));
        List<Bank> banks = List.of(new Bank(1, 600), new Bank(1, 720), new Bank(1, 1200));
        return new Work(banks, chains, List.of(), people, List.of(), 1, Long.MAX_VALUE);
    }

    private static Chain once(int bank, double celsius, int load, int press, int unload, int count) {
        int out = load + press;
        List<Span> hands = List.of(new Span(0, load), new Span(out, out + unload));
        return new Chain(bank, Temperature.celsius(celsius), hands, out + unload, links(count));
    }

    private static List<Link> links(int count) {
        List<Link> links = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            links.add(Link.plain(i));
        }
        return links;
    }
}
