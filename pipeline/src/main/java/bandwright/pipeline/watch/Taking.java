package bandwright.pipeline.watch;

import bandwright.pipeline.Flow;
import bandwright.pipeline.Workbench;
import bandwright.pipeline.intake.Inbox;
import bandwright.pipeline.intake.InboxFault;
import bandwright.pipeline.intake.InboxFile;
import bandwright.pipeline.ledger.Ledger;
import bandwright.pipeline.outbox.Outbox;
import bandwright.pipeline.outbox.OutboxFault;
import bandwright.pipeline.print.HandOver;
import bandwright.pipeline.print.Lp;
import bandwright.pipeline.print.Printing;
import bandwright.rules.Rulebook;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** From drops that are due to runs, and for each drop where it belongs. */
final class Taking {
    private final Asked asked;
    private final Rulebook rules;
    private final LocalDate today;
    private final Told told;
    private final Consumer<Placing> placed;
    private final BooleanSupplier isStopping;

    /**
     * @param placed hears where a drop belongs as soon as its run is published
     * @param isStopping whether to begin nothing more
     */
    Taking(
            Asked asked,
            Rulebook rules,
            LocalDate today,
            Told told,
            Consumer<Placing> placed,
            BooleanSupplier isStopping) {
        this.asked = asked;
        this.rules = rules;
        this.today = today;
        this.told = told;
        this.placed = placed;
        this.isStopping = isStopping;
    }

    void take(List<Sighting> due) throws IOException, Stop {
        Optional<String> paper = asked.paperOf(rules);
        try (Outbox place = Outbox.open(asked.outbox(), told.line());
                Ledger ledger = Ledger.open(asked.outbox())) {
            HandOver handOver = new HandOver(ledger, asked.outbox(), Lp.OF_THE_SYSTEM);
            handOver.leftovers(told.printed());
            Optional<Printing> printing =
                    Optional.of(new Printing(handOver, told.printed())).filter(any -> asked.isPrinted());
            Workbench bench = new Workbench(place, ledger, rules, today, printing);
            List<Drop> drops = new ArrayList<>();
            List<Placing> twins = new ArrayList<>();
            for (Sighting one : due) {
                Drop drop = Drop.read(one, ledger);
                Group.twinOf(drop, drops).ifPresentOrElse(twin -> twins.add(twin(one, twin)), () -> drops.add(drop));
            }
            for (Group group : Group.of(drops)) {
                if (isStopping.getAsBoolean()) {
                    return;
                }
                run(bench, group, paper);
            }
            twins.forEach(placed);
        }
    }

    private static Placing twin(Sighting drop, Drop twin) {
        return notTaken(drop, "twin", Glance.name(twin.sighting().path()));
    }

    private void run(Workbench bench, Group group, Optional<String> paper) throws IOException, Stop {
        try {
            Path artwork = asked.artwork().or(group::ownArtwork).orElseGet(asked::artworkFolder);
            Flow.Request request = new Flow.Request(Inbox.files(group.files()), artwork, paper);
            Workbench.Ended ended = bench.run(request, group.digests(), run -> {}, stage -> {});
            if (ended.folder().isPresent()) {
                told.published().accept(ended);
            }
            placings(group, ended).forEach(placed);
        } catch (InboxFault e) {
            return; // taken away in the meantime: the next look sees what is left
        } catch (OutboxFault | UncheckedIOException e) {
            throw e;
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) { // our own bug, on one of these files
            alone(bench, group, paper, e);
        }
    }

    /** Each by itself, so that only the one goes that the program stumbles over. */
    private void alone(Workbench bench, Group group, Optional<String> paper, Throwable e) throws IOException, Stop {
        if (group.drops().size() == 1) {
            Sighting drop = group.drops().get(0).sighting();
            placed.accept(notTaken(drop, "unforeseen", e.getClass().getSimpleName()));
            return;
        }
        for (Drop drop : group.drops()) {
            run(bench, new Group(List.of(drop)), paper);
        }
    }

    private List<Placing> placings(Group group, Workbench.Ended ended) throws IOException {
        Map<String, String> unread = ended.run().orders().unread().stream()
                .collect(Collectors.toMap(InboxFile::file, InboxFile::message, (one, same) -> one));
        Optional<String> run = ended.folder().map(Glance::name);
        List<Placing> placings = new ArrayList<>();
        for (Drop drop : group.drops()) {
            placings.add(placing(drop, run, unread));
        }
        return placings;
    }

    private Placing placing(Drop drop, Optional<String> run, Map<String, String> unread) throws IOException {
        List<String> names = drop.files().stream().map(Glance::name).toList();
        if (unread.keySet().containsAll(names)) {
            String why = names.stream().map(unread::get).distinct().collect(Collectors.joining(" "));
            return new Placing.NotTaken(drop.sighting(), why, Words.say("watch.not-taken.unread.cure"));
        }
        if (run.isPresent()) {
            return new Placing.Done(drop.sighting(), run.get());
        }
        if (drop.before().isEmpty()) {
            return notTaken(drop.sighting(), "nothing-new");
        }
        // Killed between publishing and putting away: what its run lacks belongs there.
        return PutAlready.isThere(asked.inbox(), drop)
                ? notTaken(drop.sighting(), "again", drop.before().get())
                : new Placing.Done(drop.sighting(), drop.before().get());
    }

    static Placing notTaken(Sighting drop, String name, Object... about) {
        return new Placing.NotTaken(
                drop,
                Words.say("watch.not-taken." + name, about),
                Words.say("watch.not-taken." + name + ".cure", about));
    }
}
