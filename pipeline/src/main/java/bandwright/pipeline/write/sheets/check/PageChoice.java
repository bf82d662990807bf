package bandwright.pipeline.write.sheets.check;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.size.Layer;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.tile.Sheet;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Which page of a file is drawn: the one with most different transfers among those whose pictures are quickly unpacked,
 * or else the quickest.
 */
final class PageChoice {
    /** Pixels that are unpacked twice in a quarter of a second, measured cold. [J] */
    private static final long QUICK_PIXELS = 2_700_000;

    /** Above that a page would not fit into the memory of a small machine; its boxes are compared all the same. [J] */
    private static final long MOST_PIXELS = 60_000_000;

    /** Vector artwork is drawn at the page's own density; that takes about as long as so many pixels. [J] */
    private static final long DRAWN_PIXELS = 1_000_000;

    private PageChoice() {}

    static Optional<Integer> find(List<Sheet> sheets) {
        int best = -1;
        long bestPixels = MOST_PIXELS;
        long bestKinds = 0;
        for (int i = 0; i < sheets.size(); i++) {
            long pixels = pixels(sheets.get(i));
            long kinds = kinds(sheets.get(i));
            boolean quick = pixels <= QUICK_PIXELS;
            boolean better = bestPixels <= QUICK_PIXELS ? quick && kinds > bestKinds : pixels < bestPixels;
            if (better) {
                best = i;
                bestPixels = pixels;
                bestKinds = kinds;
            }
        }
        return best < 0 ? Optional.empty() : Optional.of(best);
    }

    private static long kinds(Sheet sheet) {
        return sheet.placed().stream()
                .map(placed -> placed.unit().transfer())
                .distinct()
                .count();
    }

    private static long pixels(Sheet sheet) {
        Map<Path, Long> pixels = new TreeMap<>();
        for (Placed placed : sheet.placed()) {
            for (Layer layer : placed.unit().transfer().layers()) {
                if (layer instanceof Layer.Picture picture) {
                    ArtworkFile artwork = picture.artwork();
                    pixels.put(artwork.path(), pixels(artwork));
                }
            }
        }
        return pixels.values().stream().mapToLong(Long::longValue).sum();
    }

    private static long pixels(ArtworkFile artwork) {
        return artwork.kind().isVector() ? DRAWN_PIXELS : (long) artwork.pixelWidth() * artwork.pixelHeight();
    }
}
