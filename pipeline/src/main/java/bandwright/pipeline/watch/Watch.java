package bandwright.pipeline.watch;

import bandwright.pipeline.ledger.Ledger;
import bandwright.pipeline.outbox.OutboxFault;
import bandwright.pipeline.print.Handed;
import bandwright.rules.Rulebook;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Watches an inbox: looks again and again, takes what has arrived whole, puts away what was taken, and says in
 * status.html how it goes. Whatever stands in the way is tried again; nothing in the inbox is ever lost by it.
 */
public final class Watch implements AutoCloseable {
    private static final Duration LONGEST_PAUSE = Duration.ofMinutes(5);

    private final Asked asked;
    private final InstantSource clock;
    private final ZoneId computersZone;
    private final Told told;
    private final DropFolder folder;
    private final Glance glance;
    private final RulesReading rules;
    private final StatusFile status;
    private SortedMap<Path, Sighting> sightings = new TreeMap<>();
    private List<Unplaced> unplaced = new ArrayList<>();
    private final Deque<String> printer = new ArrayDeque<>();
    private Optional<Stop> stop = Optional.empty();
    private ZoneId zone;
    private Optional<Stop> failure = Optional.empty();
    private int failures;
    private Instant retry = Instant.MIN;
    private boolean hadLedger;
    private volatile boolean isStopping;

    /**
     * Begins to watch; nothing is looked at yet.
     *
     * @param zone the computer's, where the shop names none
     */
    public Watch(Asked asked, InstantSource clock, ZoneId zone, Told told) {
        this.asked = asked;
        this.clock = clock;
        this.computersZone = zone;
        this.zone = zone;
        this.told = new Told(told.line(), told.published(), handed -> {
            remember(handed);
            told.printed().accept(handed);
        });
        this.folder = new DropFolder(asked.inbox());
        this.glance = new Glance(asked.inbox(), asked.reserved());
        this.rules = new RulesReading(asked.rules());
        this.status = new StatusFile(asked, told);
    }

    /** Whether another watcher has the inbox, or this one could not even begin. */
    public Optional<String> refusal() {
        try {
            folder.hold();
            return Optional.empty();
        } catch (Stop e) {
            return Files.isDirectory(asked.inbox())
                    ? Optional.of(e.getMessage() + " " + e.cure())
                    : Optional.empty(); // a share may come later
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Nothing more is begun; what is being made is finished. */
    public void stop() {
        isStopping = true;
    }

    public boolean isStopping() {
        return isStopping;
    }

    /** One look at the inbox, and what follows from it. */
    public void look() {
        Instant now = clock.instant();
        try {
            sight(now);
            place();
            Rulebook current = rules.current();
            zone = current.shop().timeZone().orElse(computersZone);
            asked.paperOf(current);
            refuse();
            take(current, now);
            say(Optional.empty());
        } catch (Stop e) {
            say(Optional.of(e));
        } catch (OutboxFault e) {
            pause(Stop.of(e), now);
        } catch (IOException | UncheckedIOException e) {
            pause(world(e), now);
        } catch (RuntimeException e) { // our own bug: a watcher that nobody looks after goes on all the same
            pause(Stop.of("unforeseen", e.getClass().getSimpleName()), now);
        }
        hadLedger = hadLedger || Files.exists(asked.outbox().resolve(Ledger.FILE));
        show(isStopping ? Status.Doing.ENDED : Status.Doing.WATCHING, now);
    }

    private void show(Status.Doing doing, Instant now) {
        status.show(
                new Status(now, zone, stop, doing, sightings.values(), unplaced, List.copyOf(printer)), asked.pace());
    }

    /** The status shows the newest until this is started anew: by then somebody has read them. */
    private void remember(Handed handed) {
        if (handed.isAPersonNeeded()) {
            printer.addLast(handed.line());
            if (printer.size() > StatusPage.SHOWN) {
                printer.removeFirst();
            }
        }
    }

    private void sight(Instant now) throws IOException, Stop {
        boolean isNew = folder.hold();
        Map<Path, Look> before = sightings.entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey, entry -> entry.getValue().last()));
        sightings = Sighting.next(sightings, glance.look(before, now), isNew);
    }

    /** Puts away what could not be put away before, as it was open in another program. */
    private void place() {
        List<Unplaced> all = unplaced;
        unplaced = new ArrayList<>();
        all.forEach(one -> place(one.placing()));
    }

    private void place(Placing placing) {
        try {
            boolean isMoved = new PutAway(folder).place(placing);
            sightings.remove(placing.path());
            if (isMoved && placing instanceof Placing.NotTaken notTaken) {
                told.line().accept(Words.say("watch.not-taken", Glance.name(placing.path()), notTaken.why()));
            }
            status.refresh();
        } catch (Stop e) {
            unplaced.add(new Unplaced(placing, e.getMessage() + " " + e.cure()));
        } catch (IOException e) {
            unplaced.add(new Unplaced(placing, Words.say("watch.unplaced")));
        }
    }

    private void refuse() {
        for (Sighting one : List.copyOf(sightings.values())) {
            if (one.readiness(asked.pace()) == Readiness.REFUSED && !isUnplaced(one)) {
                place(Taking.notTaken(one, one.last().seen().word()));
            }
        }
    }

    private boolean isUnplaced(Sighting one) {
        return unplaced.stream().anyMatch(other -> other.placing().path().equals(one.path()));
    }

    private void take(Rulebook current, Instant now) throws IOException, Stop {
        Collection<Sighting> open =
                sightings.values().stream().filter(one -> !isUnplaced(one)).toList();
        List<Sighting> due = Gathering.due(open, now, asked.pace(), zone);
        if (due.isEmpty() || isStopping) {
            return;
        }
        if (failure.isPresent()
                && now.isBefore(retry)
                && Duration.between(now, retry).compareTo(LONGEST_PAUSE) <= 0) {
            throw failure.orElseThrow();
        }
        if (hadLedger && !Files.exists(asked.outbox().resolve(Ledger.FILE))) {
            throw Stop.of("outbox-gone", asked.outbox());
        }
        show(Status.Doing.MAKING, now);
        LocalDate today = LocalDate.ofInstant(now, zone);
        new Taking(asked, current, today, told, this::place, () -> isStopping).take(due);
        failures = 0;
        failure = Optional.empty();
    }

    /** A fault of the world goes away by itself or by a person's hand: each try waits twice as long as the one before. */
    private void pause(Stop why, Instant now) {
        failure = Optional.of(why);
        Duration pause = asked.pace().looks().multipliedBy(1L << Math.min(failures, 10));
        failures++;
        retry = now.plus(pause.compareTo(LONGEST_PAUSE) < 0 ? pause : LONGEST_PAUSE);
        say(failure);
    }

    private Stop world(Exception e) {
        return Files.isDirectory(asked.inbox())
                ? Stop.of("failed", String.valueOf(e.getMessage()))
                : Stop.of("inbox-gone", asked.inbox());
    }

    /** Says a change once, not at every look. */
    private void say(Optional<Stop> now) {
        boolean isSame = now.isPresent() == stop.isPresent()
                && (now.isEmpty() || now.get().isLike(stop.get()));
        if (!isSame) {
            now.ifPresentOrElse(this::say, () -> told.line().accept(Words.say("watch.goes-on")));
        }
        stop = now;
    }

    private void say(Stop now) {
        now.lines().forEach(told.line());
        told.line().accept(Words.say("watch.stopped", now.getMessage(), now.cure()));
    }

    /** Lets the inbox go and says so in status.html. */
    @Override
    public void close() {
        isStopping = true;
        show(Status.Doing.ENDED, clock.instant());
        folder.close();
    }
}
