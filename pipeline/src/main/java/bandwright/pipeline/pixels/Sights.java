package bandwright.pipeline.pixels;

import bandwright.pipeline.artwork.ArtworkFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.FutureTask;

/**
 * The views of a run's pictures, each read once while memory is plenty. Those that are judged by are kept for every stage, of
 * the finer ones, to draw by, only the last.
 */
public final class Sights {
    /** Enough to judge colours by, few enough to keep two hundred of them. [J] */
    private static final int MOST_PIXELS = 160_000;

    /** Of the finer views that are kept, together: a dozen for proofs, 16 MB. */
    private static final long FINER_PIXELS = 4_000_000;

    private final Map<Step, View> views = new ConcurrentHashMap<>();
    private final Deque<View> finer = new ArrayDeque<>();

    /** So many pixels of a file each way become one. */
    private record Step(Path file, int step) {}

    /** Begins to look at pictures beside the caller, at the last one first, as whoever asks begins with the first. */
    public void begin(Collection<ArtworkFile> artworks) {
        Deque<ArtworkFile> backwards = new ArrayDeque<>();
        artworks.forEach(backwards::push);
        // The task keeps what is thrown to itself: whoever asks for that picture meets it again.
        Thread beside = new Thread(new FutureTask<>(() -> backwards.forEach(this::of), true), "views");
        beside.setDaemon(true); // a run that fails waits for no picture
        beside.start();
    }

    /** A picture's view of some 160,000 pixels at most; empty if it can't be decoded. */
    public Optional<Sight> of(ArtworkFile artwork) {
        return view(artwork, step(artwork)).sight();
    }

    /** A view with at least so many pixels across and up, as far as the picture has them. */
    public Optional<Sight> of(ArtworkFile artwork, double across, double up) {
        double spare = Math.min(artwork.shownWidth() / across, artwork.shownHeight() / up);
        int most = Math.min(artwork.pixelWidth(), artwork.pixelHeight());
        int step = (int) Math.max(1, Math.min(most, Math.floor(spare)));
        if (step >= step(artwork)) {
            return of(artwork);
        }
        View view = view(artwork, step);
        keep(view);
        return view.sight();
    }

    /**
     * Whether a JPEG's packed bytes are rubbish. Its header doesn't tell, and it goes into a PDF as it is; one that is sound
     * but of a kind that can't be looked at here is none.
     */
    public boolean isDamaged(ArtworkFile artwork) {
        return artwork.kind() == ArtworkFile.Kind.JPEG
                && of(artwork).isEmpty()
                && Files.isReadable(artwork.path()) // one that is gone is another fault
                && !Decoding.isUnpacked(artwork, step(artwork));
    }

    private View view(ArtworkFile artwork, int step) {
        return views.computeIfAbsent(new Step(artwork.path(), step), any -> new View(artwork, step));
    }

    /** Lets those finer views go that were asked for longest ago. */
    private synchronized void keep(View view) {
        finer.remove(view);
        finer.addLast(view);
        while (finer.size() > 1 && finer.stream().mapToLong(View::pixels).sum() > FINER_PIXELS) {
            finer.removeFirst().forget();
        }
    }

    private static int step(ArtworkFile artwork) {
        double pixels = (double) artwork.pixelWidth() * artwork.pixelHeight();
        int most = Math.min(artwork.pixelWidth(), artwork.pixelHeight());
        return Math.max(1, Math.min(most, (int) Math.ceil(Math.sqrt(pixels / MOST_PIXELS))));
    }
}
