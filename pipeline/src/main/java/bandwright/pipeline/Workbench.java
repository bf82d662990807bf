package bandwright.pipeline;

import bandwright.pipeline.ledger.Ledger;
import bandwright.pipeline.outbox.Outbox;
import bandwright.pipeline.print.Printing;
import bandwright.rules.Rulebook;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * An outbox that is held for work, its ledger, and the rulebook of the day: where one run after another is made.
 *
 * @param printing empty = sheets are not handed to a printer
 */
public record Workbench(Outbox outbox, Ledger ledger, Rulebook rules, LocalDate today, Optional<Printing> printing) {
    /**
     * How a run ended.
     *
     * @param folder where it was published; empty if no file could be read, or nothing in them is new
     */
    public record Ended(Run run, Optional<Path> folder) {}

    /**
     * Makes one run.
     *
     * @param contents digests of the files that were dropped for it
     * @param decided hears what was decided, before anything is written
     */
    public Ended run(Flow.Request asked, List<String> contents, Consumer<Run> decided, Consumer<Flow.Stage> progress)
            throws IOException {
        ledger.purge(today.minusDays(rules.shop().keepBuyerDays()));
        RunId id = outbox.nextRun(today, ledger.highestRun(today));
        Run run = Flow.decide(id, asked, rules, ledger, progress);
        decided.accept(run);
        if (run.orders().isNothingReadable() || !Flow.hasNews(run, rules)) {
            return new Ended(run, Optional.empty());
        }
        printing.ifPresent(printer -> printer.promise(run));
        Path folder = Flow.publish(run, contents, rules, outbox, ledger, progress);
        printing.ifPresent(printer -> printer.send(run, folder));
        return new Ended(run, Optional.of(folder));
    }
}
