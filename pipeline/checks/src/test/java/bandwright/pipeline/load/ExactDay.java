package bandwright.pipeline.load;

import bandwright.pipeline.load.Work.Bank;
import bandwright.pipeline.load.Work.Chain;
import bandwright.pipeline.load.Work.Link;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.solver.variables.Task;

/**
 * When a small day ends at the earliest, as a general constraint solver proves it: the same laws put down once more, and
 * nothing of our own search. Of circuits it knows days on which every bank has one machine.
 */
final class ExactDay {
    /** Counted, not timed, so that the same days are solved anywhere. */
    private static final int MOST_FAILS = 4_000;

    private final Work work;
    private final int most;
    private final Model model = new Model("a day");
    private final List<IntVar> ends = new ArrayList<>();
    private final List<Task> hands = new ArrayList<>();
    private final List<List<Placed>> ofBank = new ArrayList<>();

    /**
     * What the solver says.
     *
     * @param isProven false = it gave up
     * @param least the least end there is; empty = none is sooner
     */
    record Answer(boolean isProven, OptionalInt least) {
        static final Answer UNKNOWN = new Answer(false, OptionalInt.empty());
    }

    private record Placed(Chain chain, IntVar start, IntVar machine) {}

    private ExactDay(Work work, int most) {
        this.work = work;
        this.most = most;
        work.banks().forEach(bank -> ofBank.add(new ArrayList<>()));
    }

    /** Whether, and how, a day could end before that. */
    static Answer before(Work work, int end) {
        return new ExactDay(work, end - 1).least();
    }

    private Answer least() {
        for (Chain chain : work.chains()) {
            if (!take(chain)) {
                return new Answer(true, OptionalInt.empty());
            }
        }
        IntVar end = model.intVar("end", 0, most);
        model.max(end, ends.toArray(IntVar[]::new)).post();
        ofBank.forEach(this::oneAtATime);
        cumulate(hands, hands.stream().mapToInt(task -> 1).toArray(), work.people());
        circuits();
        model.setObjective(Model.MINIMIZE, end);
        List<IntVar> decided = new ArrayList<>();
        ofBank.forEach(loads -> loads.forEach(load -> decided.add(load.machine())));
        ofBank.forEach(loads -> loads.forEach(load -> decided.add(load.start())));
        model.getSolver()
                .setSearch(org.chocosolver.solver.search.strategy.Search.domOverWDegSearch(
                        decided.toArray(IntVar[]::new)));
        model.getSolver().limitFail(MOST_FAILS);
        OptionalInt least = OptionalInt.empty();
        while (model.getSolver().solve()) {
            least = OptionalInt.of(end.getValue());
        }
        if (model.getSolver().isStopCriterionMet()) {
            return Answer.UNKNOWN;
        }
        return new Answer(true, least);
    }

    private boolean take(Chain chain) {
        Bank bank = work.banks().get(chain.bank());
        List<IntVar> starts = new ArrayList<>();
        int cycle = (int) chain.cycle();
        int[] possible = IntStream.rangeClosed((int) bank.warmUp(), most - cycle)
                .filter(start ->
                        work.breaks().stream().allMatch(pause -> start >= pause.to() || start + cycle <= pause.from()))
                .toArray();
        for (Link link : chain.links()) {
            if (possible.length == 0) {
                return false;
            }
            IntVar start = model.intVar("start", possible);
            IntVar machine = model.intVar("machine", 0, bank.machines() - 1);
            if (!starts.isEmpty()) {
                model.arithm(start, ">=", starts.get(starts.size() - 1)).post();
            }
            if (link.waitsFor() >= 0) {
                model.arithm(start, ">=", starts.get(link.waitsFor()), "+", cycle + (int) link.look())
                        .post();
            }
            starts.add(start);
            ends.add(model.offset(start, cycle));
            ofBank.get(chain.bank()).add(new Placed(chain, start, machine));
            for (Span span : chain.hands()) {
                IntVar from = model.offset(start, (int) span.from());
                hands.add(new Task(from, (int) (span.to() - span.from())));
            }
        }
        return true;
    }

    /** Between two loads of one machine the one that comes first is out, and the heat is changed. */
    private void oneAtATime(List<Placed> loads) {
        for (int i = 0; i < loads.size(); i++) {
            for (int j = 0; j < i; j++) {
                Placed one = loads.get(i);
                Placed other = loads.get(j);
                model.or(
                                model.arithm(one.machine(), "!=", other.machine())
                                        .reify(),
                                after(one, other).reify(),
                                after(other, one).reify())
                        .post();
            }
        }
    }

    private org.chocosolver.solver.constraints.Constraint after(Placed one, Placed other) {
        int change = work.banks()
                .get(one.chain().bank())
                .rates()
                .secondsBetween(other.chain().heat(), one.chain().heat());
        return model.arithm(
                one.start(), ">=", other.start(), "+", (int) other.chain().cycle() + change);
    }

    private void circuits() {
        for (int circuit = 0; circuit < work.circuits().size(); circuit++) {
            List<Task> on = new ArrayList<>();
            List<Integer> watts = new ArrayList<>();
            for (int bank = 0; bank < ofBank.size(); bank++) {
                Bank machine = work.banks().get(bank);
                if (machine.circuit() == circuit && !ofBank.get(bank).isEmpty()) {
                    on.add(hours(machine, ofBank.get(bank)));
                    watts.add(Math.min(machine.watts(), work.circuits().get(circuit)));
                }
            }
            cumulate(
                    on,
                    watts.stream().mapToInt(Integer::intValue).toArray(),
                    work.circuits().get(circuit));
        }
    }

    private Task hours(Bank bank, List<Placed> loads) {
        IntVar first = model.intVar("first", 0, most);
        IntVar off = model.intVar("off", 0, most);
        model.min(first, loads.stream().map(Placed::start).toArray(IntVar[]::new))
                .post();
        model.max(
                        off,
                        loads.stream()
                                .map(load -> model.offset(
                                        load.start(), (int) load.chain().cycle()))
                                .toArray(IntVar[]::new))
                .post();
        IntVar on = model.offset(first, -(int) bank.warmUp());
        IntVar length = model.intVar("length", 0, most);
        return new Task(on, length, off);
    }

    private void cumulate(List<Task> tasks, int[] heights, int capacity) {
        if (!tasks.isEmpty()) {
            model.cumulative(
                            tasks.toArray(Task[]::new),
                            IntStream.of(heights).mapToObj(model::intVar).toArray(IntVar[]::new),
                            model.intVar(capacity))
                    .post();
        }
    }
}
