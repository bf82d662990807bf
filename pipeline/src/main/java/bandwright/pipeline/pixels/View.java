package bandwright.pipeline.pixels;

import bandwright.pipeline.artwork.ArtworkFile;
import java.io.IOException;
import java.lang.ref.SoftReference;
import java.util.Optional;

/** A picture at one step, read when it is first asked for and kept while memory is plenty. */
final class View {
    private final ArtworkFile artwork;
    private final int step;
    private volatile SoftReference<Optional<Sight>> kept = new SoftReference<>(null);

    View(ArtworkFile artwork, int step) {
        this.artwork = artwork;
        this.step = step;
    }

    /** Empty if it can't be decoded. Who asks while another reads it waits for that. */
    synchronized Optional<Sight> sight() {
        Optional<Sight> known = kept.get();
        if (known != null) {
            return known;
        }
        Optional<Sight> sight = read();
        kept = new SoftReference<>(sight);
        return sight;
    }

    void forget() {
        kept.clear();
    }

    /** About so many. */
    long pixels() {
        return (long) (artwork.pixelWidth() / step) * (artwork.pixelHeight() / step);
    }

    private Optional<Sight> read() {
        try {
            return Optional.of(Sight.read(artwork, step));
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
