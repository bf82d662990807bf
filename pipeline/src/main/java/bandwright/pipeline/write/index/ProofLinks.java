package bandwright.pipeline.write.index;

import bandwright.pipeline.Run;
import bandwright.pipeline.rows.From;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.write.proofs.ProofOrder;
import bandwright.rules.Rulebook;
import bandwright.rules.words.Words;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** The proofs of a run's orders, to be looked at from the page. */
final class ProofLinks {
    private final Map<From, ProofOrder> byRow = new TreeMap<>();

    /** @param files what is there: a proof that isn't is not linked */
    ProofLinks(Run run, Rulebook rules, Set<String> files) {
        for (ProofOrder proof : ProofOrder.of(run, rules)) {
            if (files.contains(proof.file())) {
                for (Unit unit : proof.units()) {
                    byRow.put(unit.matched().line().row().from(), proof);
                }
            }
        }
    }

    /** The proof of the order that a row belongs to, small; a click shows it in its own size. */
    void write(Html html, From row) {
        find(row).ifPresent(proof -> {
            html.open("a", "href", proof.file(), "class", "proof");
            html.open("img", "src", proof.file(), "loading", "lazy", "alt", Words.say("index.proof", proof.order()));
            html.close("a");
        });
    }

    private Optional<ProofOrder> find(From row) {
        return Optional.ofNullable(byRow.get(row));
    }
}
