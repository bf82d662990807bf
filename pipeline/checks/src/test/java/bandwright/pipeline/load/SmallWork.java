package bandwright.pipeline.load;

import bandwright.pipeline.load.Work.Bank;
import bandwright.pipeline.load.Work.Chain;
import bandwright.pipeline.load.Work.Link;
import bandwright.rules.heat.HeatRates;
import bandwright.rules.units.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Any day of three to eight loads, of whatever can be in the way: its seconds are few, so that a solver can be through. */
final class SmallWork {
    private final SplittableRandom random;

    private SmallWork(long seed) {
        this.random = new SplittableRandom(seed);
    }

    static Work of(long seed) {
        return new SmallWork(seed).work();
    }

    private Work work() {
        boolean isOnCircuit = random.nextInt(4) == 0;
        List<Bank> banks = new ArrayList<>();
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            banks.add(new Bank(
                    isOnCircuit ? 1 : 1 + random.nextInt(2),
                    random.nextInt(12),
                    new HeatRates(120 + random.nextInt(600), 60 + random.nextInt(300)),
                    isOnCircuit ? 400 + 100 * random.nextInt(8) : 0,
                    isOnCircuit ? 0 : Bank.NO_CIRCUIT));
        }
        List<Chain> chains = new ArrayList<>();
        int loads = 3 + random.nextInt(6);
        for (int left = loads; left > 0; ) {
            int links = Math.min(left, 1 + random.nextInt(3));
            chains.add(chain(random.nextInt(banks.size()), loads - left, links));
            left -= links;
        }
        List<Span> breaks = random.nextInt(3) == 0 ? List.of(new Span(35, 45)) : List.of();
        List<Integer> circuits = isOnCircuit ? List.of(1440) : List.of();
        return new Work(banks, chains, circuits, 1 + random.nextInt(2), breaks, 1, Long.MAX_VALUE);
    }

    private Chain chain(int bank, int turn, int links) {
        List<Span> hands = new ArrayList<>();
        int at = random.nextInt(6);
        hands.add(new Span(0, at));
        int positions = 1 + random.nextInt(3);
        for (int position = 1; position < positions; position++) {
            at += 2 + random.nextInt(8);
            int turned = at + 1 + random.nextInt(3);
            hands.add(new Span(at, turned));
            at = turned;
        }
        at += 3 + random.nextInt(12);
        int cycle = at + random.nextInt(6);
        hands.add(new Span(at, cycle));
        boolean isTried = random.nextInt(4) == 0;
        List<Link> all = new ArrayList<>();
        for (int i = 0; i < links; i++) {
            all.add(new Link(turn + i, 1, 0, 0, isTried && i > 0 ? 0 : -1, 0));
        }
        return new Chain(bank, Temperature.celsius(180 + 5 * random.nextInt(4)), hands, cycle, all);
    }
}
