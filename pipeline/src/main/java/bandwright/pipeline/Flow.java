package bandwright.pipeline;

import bandwright.pipeline.artwork.ArtworkShelf;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.Split;
import bandwright.pipeline.intake.Intake;
import bandwright.pipeline.intake.Orders;
import bandwright.pipeline.load.Load;
import bandwright.pipeline.load.Loading;
import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.match.Matching;
import bandwright.pipeline.outbox.Outbox;
import bandwright.pipeline.size.Sizing;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.tile.Tiled;
import bandwright.pipeline.tile.Tiling;
import bandwright.pipeline.write.Outputs;
import bandwright.rules.Rulebook;
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
    public static Run decide(RunId id, Request asked, Rulebook rules, Consumer<Stage> progress) throws IOException {
        progress.accept(Stage.INTAKE);
        Orders orders = Intake.read(asked.orderFiles(), rules);
        progress.accept(Stage.MATCH);
        ArtworkShelf shelf = ArtworkShelf.open(asked.artwork());
        Split<MatchedLine> matched = Matching.each(orders.lines(), rules, shelf);
        progress.accept(Stage.SIZE);
        Split<Unit> sized = Sizing.each(matched.made(), rules, asked.paper());
        progress.accept(Stage.LOAD);
        List<Load> loads = Loading.all(sized.made(), rules);
        progress.accept(Stage.TILE);
        Tiled tiled = Tiling.all(loads, rules);
        List<HeldRow> held = inRowOrder(orders.held(), matched.held(), sized.held());
        return new Run(id, orders, sized.made(), held, orders.skipped(), loads, tiled);
    }

    /** Writes what was decided, reads it back, and publishes it at once or not at all. */
    public static Path publish(Run run, Rulebook rules, Outbox outbox, Consumer<Stage> progress) {
        progress.accept(Stage.WRITE);
        return outbox.publish(run.id(), Outputs.files(run, rules, outbox.scratch()), folder -> {
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
