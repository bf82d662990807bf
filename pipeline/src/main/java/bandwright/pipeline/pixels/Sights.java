package bandwright.pipeline.pixels;

import bandwright.pipeline.artwork.ArtworkFile;
import java.io.IOException;
import java.lang.ref.SoftReference;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The views of a run's pictures, each read once while memory is plenty. */
public final class Sights {
    /** Enough to judge colours by, few enough to keep two hundred of them. [J] */
    private static final int MOST_PIXELS = 160_000;

    private final Map<Path, SoftReference<Optional<Sight>>> seen = new ConcurrentHashMap<>();

    /** A picture's view of some 160,000 pixels at most; empty if it can't be decoded. */
    public Optional<Sight> of(ArtworkFile artwork) {
        SoftReference<Optional<Sight>> known = seen.get(artwork.path());
        Optional<Sight> sight = known == null ? null : known.get();
        if (sight == null) {
            sight = read(artwork, step(artwork));
            seen.put(artwork.path(), new SoftReference<>(sight));
        }
        return sight;
    }

    /** A view with at least so many pixels across and up, as far as the picture has them. */
    public Optional<Sight> of(ArtworkFile artwork, double across, double up) {
        double spare = Math.min(artwork.shownWidth() / across, artwork.shownHeight() / up);
        int most = Math.min(artwork.pixelWidth(), artwork.pixelHeight());
        int step = (int) Math.max(1, Math.min(most, Math.floor(spare)));
        return step >= step(artwork) ? of(artwork) : read(artwork, step);
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
