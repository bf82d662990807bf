package bandwright.pipeline;

import bandwright.pipeline.allot.Allotting;
import bandwright.pipeline.approve.Approved;
import bandwright.pipeline.approve.Approving;
import bandwright.pipeline.artwork.ArtworkShelf;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.Split;
import bandwright.pipeline.intake.Intake;
import bandwright.pipeline.intake.Orders;
import bandwright.pipeline.ledger.Ledger;
import bandwright.pipeline.load.Loading;
import bandwright.pipeline.load.PressDay;
import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.match.Matching;
import bandwright.pipeline.outbox.Outbox;
import bandwright.pipeline.owed.Owed;
import bandwright.pipeline.owed.Owing;
import bandwright.pipeline.past.Memory;
import bandwright.pipeline.past.Past;
import bandwright.pipeline.pixels.Sights;
import bandwright.pipeline.size.Sizing;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.size.WholeOrders;
import bandwright.pipeline.tile.Tiled;
import bandwright.pipeline.tile.Tiling;
import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.Outputs;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blank;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** The whole job: order files in, a run's folder out. intake -> match -> size -> load -> tile -> write -> outbox. */
public final class Flow {
    private Flow() {}

    /**
     * What a run is asked for.
     *
     * @param orderFiles in the order in which they are read
     * @param artwork the artwork folder; need not exist
     * @param paper the id of the paper to print on; empty = the shop's
     */
    public record Request(List<Path> orderFiles, Path artwork, Optional<String> paper) {
        public Request {
            orderFiles = List.copyOf(orderFiles);
        }
    }

    /** Decides everything; nothing is written yet. Throws if the artwork folder is there but can't be listed. */
    public static Run decide(RunId id, Request asked, Rulebook rules, Memory memory, Consumer<Stage> progress)
            throws IOException {
        progress.accept(Stage.INTAKE);
        Orders orders = Intake.read(asked.orderFiles(), rules);
        progress.accept(Stage.MATCH);
        ArtworkShelf shelf = ArtworkShelf.open(asked.artwork());
        Split<MatchedLine> matched = Matching.each(orders.lines(), rules, shelf);
        progress.accept(Stage.SIZE);
        Past past = memory.past(Owing.keys(orders, rules), Counted.on(rules), skus(rules));
        Owed owed = Owing.each(matched, orders, rules, past);
        Sights sights = new Sights();
        Split<Unit> sized = Sizing.each(owed.lines(), rules, sights, asked.paper(), past.ids());
        Approved approved = Approving.each(sized);
        Split<Unit> allotted = Allotting.each(approved.split(), rules, past);
        Split<Unit> whole = WholeOrders.of(allotted, owed.held(), orders, rules);
        progress.accept(Stage.LOAD);
        PressDay day = Loading.all(whole.made(), rules, past, id.date());
        progress.accept(Stage.TILE);
        Tiled tiled = Tiling.all(day.loads(), rules);
        List<HeldRow> held = inRowOrder(owed.held(), whole.held());
        return new Run(
                id, orders, past, owed, whole.made(), approved.waiting(), held, owed.skipped(), day, tiled, sights);
    }

    /** Whether the run has something that no earlier run had: else there is nothing to publish. */
    public static boolean hasNews(Run run, Rulebook rules) {
        return Entries.hasNews(run, rules.sites());
    }

    /** Publishes a run of files that lie where they lay. */
    public static Path publish(Run run, Rulebook rules, Outbox outbox, Ledger ledger, Consumer<Stage> progress) {
        return publish(run, List.of(), rules, outbox, ledger, progress);
    }

    /**
     * Writes what was decided, reads it back, and publishes it at once, with its entry in the ledger, or not at all.
     *
     * @param contents digests of the files that were dropped for it, which the ledger will know again
     */
    public static Path publish(
            Run run, List<String> contents, Rulebook rules, Outbox outbox, Ledger ledger, Consumer<Stage> progress) {
        progress.accept(Stage.WRITE);
        List<OutFile> files = Outputs.files(run, rules, outbox.scratch());
        return outbox.publish(run.id(), files, ledger.entering(Entries.of(run, contents, rules.sites())), folder -> {
            progress.accept(Stage.READ_BACK);
            return ReadBack.mismatches(run, folder);
        });
    }

    /** The stages as a person who waits is told of them. */
    public enum Stage {
        INTAKE,
        MATCH,
        SIZE,
        LOAD,
        TILE,
        WRITE,
        READ_BACK
    }

    private static List<String> skus(Rulebook rules) {
        return rules.blanks().list().stream().map(Blank::sku).toList();
    }

    @SafeVarargs
    private static List<HeldRow> inRowOrder(List<HeldRow>... stages) {
        List<HeldRow> all = new ArrayList<>();
        for (List<HeldRow> stage : stages) {
            all.addAll(stage);
        }
        all.sort(Comparator.comparing(held -> held.row().from()));
        return all;
    }
}
