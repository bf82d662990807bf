package bandwright.pipeline.write.thumb;

import bandwright.pipeline.Run;
import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.pixels.Sights;
import bandwright.pipeline.size.Layer;
import bandwright.pipeline.size.Transfer;
import bandwright.pipeline.size.Unit;
import bandwright.rules.colour.SeenBase;
import bandwright.rules.units.Rgb;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.stream.Collectors;

/**
 * A small picture of each distinct transfer of a run, upright and unmirrored as it will be seen on the blank. They are
 * made once, by one thread beside the caller's and, from when the first is asked for, by the caller's too; each artwork
 * file is decoded once, and every output takes them from here. A picture that can't be decoded is a grey tile: no run
 * fails for it.
 */
public final class Thumbnails {
    /** The longer side in pixels, while there are few. */
    private static final int SIDE = 320;

    /** So many have the full size; of more each is smaller, so that all together take no more room. */
    private static final int FULL_SIZE = 48;

    private static final int LEAST_SIDE = 96;

    private final Sights sights;
    private final Map<Look, Integer> numbers = new LinkedHashMap<>();
    private List<FutureTask<Thumbnail>> drawings = List.of();
    private List<Thumbnail> made = List.of();
    private Runnable making = () -> {};

    /** A transfer on paper or on the blank: on a base of that colour. */
    private record Look(Transfer transfer, Rgb base) {
        static Look of(Unit unit) {
            return new Look(
                    unit.transfer(), SeenBase.judged(unit.matched().blank()).colour());
        }
    }

    /** The pictures of the distinct ones of these transfers, on paper; nothing is decoded yet. */
    public Thumbnails(List<Transfer> transfers, Sights sights) {
        this(
                transfers.stream()
                        .map(transfer -> new Look(transfer, Rgb.WHITE))
                        .collect(Collectors.toCollection(LinkedHashSet::new)),
                sights);
    }

    private Thumbnails(Set<Look> looks, Sights sights) {
        this.sights = sights;
        looks.forEach(look -> numbers.put(look, numbers.size() + 1));
    }

    /** The pictures of a run's units, on paper and on their blanks. */
    public static Thumbnails of(Run run) {
        Set<Look> looks = new LinkedHashSet<>();
        run.units().forEach(unit -> looks.add(new Look(unit.transfer(), Rgb.WHITE)));
        run.units().forEach(unit -> looks.add(Look.of(unit)));
        return new Thumbnails(looks, run.sights());
    }

    /** The picture of a transfer of this run, on paper. */
    public Thumbnail get(Transfer transfer) {
        return get(new Look(transfer, Rgb.WHITE));
    }

    /** The picture of a unit of this run, as it will look on its blank. */
    public Thumbnail onBlank(Unit unit) {
        return get(Look.of(unit));
    }

    private Thumbnail get(Look look) {
        Integer number = numbers.get(look);
        if (number == null) {
            throw new IllegalArgumentException("no unit has this transfer");
        }
        return list().get(number - 1);
    }

    /** All of them, by their numbers. */
    public synchronized List<Thumbnail> list() {
        if (made.isEmpty() && !numbers.isEmpty()) {
            begin();
            making.run();
            made = drawings.stream().map(Thumbnails::result).toList();
            making = () -> {};
        }
        return made;
    }

    /** Lets another thread begin to make them; without that they are begun when the first is asked for. */
    public synchronized void begin() {
        if (!drawings.isEmpty()) {
            return;
        }
        int side = side(
                (int) numbers.keySet().stream().map(Look::transfer).distinct().count());
        Map<Path, FutureTask<Optional<SmallPicture>>> pictures = new LinkedHashMap<>();
        wanted(side).forEach((path, size) -> pictures.put(path, new FutureTask<>(() -> size.read(sights))));
        List<FutureTask<Thumbnail>> tasks = new ArrayList<>();
        numbers.forEach((look, number) -> tasks.add(new FutureTask<>(() -> TransferDrawing.draw(
                number, look.transfer(), look.base(), side, artwork -> picture(pictures, artwork)))));
        drawings = tasks;
        // A task that is done or being done is passed over, so whoever comes second takes the next one.
        making = () -> {
            pictures.values().forEach(FutureTask::run);
            tasks.forEach(FutureTask::run);
        };
        Thread beside = new Thread(making, "small pictures");
        beside.setDaemon(true); // a run that fails waits for no picture
        beside.start();
    }

    private static Optional<SmallPicture> picture(
            Map<Path, FutureTask<Optional<SmallPicture>>> pictures, ArtworkFile artwork) {
        return Optional.ofNullable(pictures.get(artwork.path())).flatMap(Thumbnails::result);
    }

    private static int side(int count) {
        double share = Math.sqrt((double) FULL_SIZE / Math.max(FULL_SIZE, count));
        return Math.max(LEAST_SIDE, (int) (SIDE * share));
    }

    private Map<Path, Wanted> wanted(int side) {
        Map<Path, Wanted> wanted = new LinkedHashMap<>();
        for (Transfer transfer :
                numbers.keySet().stream().map(Look::transfer).distinct().toList()) {
            double pixelsPerMm = TransferDrawing.pixelsPerMm(transfer, side);
            for (Layer layer : transfer.layers()) {
                if (layer instanceof Layer.Picture picture) {
                    Wanted size = new Wanted(
                            picture.artwork(),
                            picture.place().width().mm() * pixelsPerMm,
                            picture.place().height().mm() * pixelsPerMm);
                    wanted.merge(picture.artwork().path(), size, Wanted::larger);
                }
            }
        }
        return wanted;
    }

    /** How large a picture is needed at most, in pixels as a person sees it. */
    private record Wanted(ArtworkFile artwork, double width, double height) {
        Wanted larger(Wanted other) {
            return new Wanted(artwork, Math.max(width, other.width), Math.max(height, other.height));
        }

        Optional<SmallPicture> read(Sights sights) {
            return SmallPicture.read(sights, artwork, width, height);
        }
    }

    private static <T> T result(FutureTask<T> task) {
        boolean isInterrupted = false;
        try {
            while (true) {
                try {
                    return task.get();
                } catch (InterruptedException e) {
                    isInterrupted = true; // the picture is nearly there; whoever interrupted finds the mark set
                }
            }
        } catch (ExecutionException e) {
            throw new IllegalStateException("a thumbnail could not be drawn", e.getCause());
        } finally {
            if (isInterrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
