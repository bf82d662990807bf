package bandwright.pipeline.load;

import bandwright.rules.heat.HeatRates;
import bandwright.rules.units.Temperature;
import java.util.List;

/**
 * All that a day has to do and with what, in plain numbers. Times are seconds from the start of the day's work.
 *
 * @param circuits what may draw on each at the same time, in watts
 * @param people who load, turn and unload
 * @param breaks in the order of the day
 * @param dates how many ship-by dates there are
 * @param collection when parcels are fetched; {@link Long#MAX_VALUE} = it isn't asked
 */
record Work(
        List<Bank> banks,
        List<Chain> chains,
        List<Integer> circuits,
        int people,
        List<Span> breaks,
        int dates,
        long collection) {
    Work {
        banks = List.copyOf(banks);
        chains = List.copyOf(chains);
        circuits = List.copyOf(circuits);
        breaks = List.copyOf(breaks);
    }

    /** Alike machines. */
    record Bank(int machines, long warmUp, HeatRates rates, int watts, int circuit) {
        /** It hangs on no circuit that limits it. */
        static final int NO_CIRCUIT = -1;

        Bank(int machines, long warmUp) {
            this(machines, warmUp, HeatRates.BUILT_IN, 0, NO_CIRCUIT);
        }
    }

    /**
     * Loads of one bank that are alike: they start in this order.
     *
     * @param hands when somebody is at it, from the start of a load
     * @param cycle from the start of a load to its end
     */
    record Chain(int bank, Temperature heat, List<Span> hands, long cycle, List<Link> links) {
        Chain {
            hands = hands.stream().filter(span -> !span.isEmpty()).toList();
            links = List.copyOf(links);
        }
    }

    /**
     * One load.
     *
     * @param turn its place in the list of all loads by urgency
     * @param dates the ship-by dates of its pieces, as bits from 0, the earliest
     * @param due how many of its pieces are wanted at the collection
     * @param rest how long they may not be handled when they are out
     * @param waitsFor the load of the same chain that must be out before; -1 = none
     * @param look how long that one has to be out before it can be looked at
     */
    record Link(int turn, long dates, int due, long rest, int waitsFor, long look) {
        /** After nothing, wanted at no collection. */
        static Link plain(int turn) {
            return new Link(turn, 1, 0, 0, -1, 0);
        }
    }

    int loads() {
        return chains.stream().mapToInt(chain -> chain.links().size()).sum();
    }

    /** All that the bank of a chain has to do, for each of its machines. */
    long workOf(int chain) {
        int bank = chains.get(chain).bank();
        return chains.stream()
                        .filter(other -> other.bank() == bank)
                        .mapToLong(other -> other.cycle() * other.links().size())
                        .sum()
                / banks.get(bank).machines();
    }

    /** How many of a bank its circuit carries at the same time. */
    int together(Bank bank) {
        int watts = wattsOf(bank);
        return watts == 0 ? bank.machines() : Math.min(bank.machines(), circuits.get(bank.circuit()) / watts);
    }

    /** A machine alone may draw what it draws; how much room it takes on its circuit otherwise. */
    int wattsOf(Bank bank) {
        return bank.circuit() == Bank.NO_CIRCUIT ? 0 : Math.min(bank.watts(), circuits.get(bank.circuit()));
    }
}
