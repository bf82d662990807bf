package bandwright.pipeline.pixels;

import bandwright.pipeline.artwork.ArtworkFile;
import java.io.IOException;
import java.lang.ref.SoftReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The views of a run's pictures, each read once while memory is plenty. */
public final class Sights {
    /** Enough to judge colours by, few enough to keep two hundred of them. [J] */
    private static final int MOST_PIXELS = 160_000;

    private final Map<Step, SoftReference<Optional<Sight>>> seen = new ConcurrentHashMap<>();

    /** So many pixels of a file each way become one. */
    private record Step(Path file, int step) {}

    /** A picture's view of some 160,000 pixels at most; empty if it can't be decoded. */
    public Optional<Sight> of(ArtworkFile artwork) {
        return of(artwork, step(artwork));
    }

    /** A view with at least so many pixels across and up, as far as the picture has them. */
    public Optional<Sight> of(ArtworkFile artwork, double across, double up) {
        double spare = Math.min(artwork.shownWidth() / across, artwork.shownHeight() / up);
        int most = Math.min(artwork.pixelWidth(), artwork.pixelHeight());
        int step = (int) Math.max(1, Math.min(most, Math.floor(spare)));
        return of(artwork, Math.min(step, step(artwork)));
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

    private Optional<Sight> of(ArtworkFile artwork, int step) {
        Step key = new Step(artwork.path(), step);
        SoftReference<Optional<Sight>> known = seen.get(key);
        Optional<Sight> sight = known == null ? null : known.get();
        if (sight == null) {
            sight = read(artwork, step);
            seen.put(key, new SoftReference<>(sight));
        }
        return sight;
    }

    private static int step(ArtworkFile artwork) {
        double pixels = (double) artwork.pixelWidth() * artwork.pixelHeight();
        int most = Math.min(artwork.pixelWidth(), artwork.pixelHeight());
        return Math.max(1, Math.min(most, (int) Math.ceil(Math.sqrt(pixels / MOST_PIXELS))));
    }

    private static Optional<Sight> read(ArtworkFile artwork, int step) {
        try {
            return Optional.of(Sight.read(artwork, step));
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
