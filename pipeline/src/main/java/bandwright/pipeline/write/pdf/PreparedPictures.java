package bandwright.pipeline.write.pdf;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;

/**
 * The pictures of a run, each prepared once for all its documents. What is packed anew lies in a scratch folder, so that
 * two hundred pictures take no memory; two names with the same bytes are one picture. For one writer at a time: two files
 * of sheets written side by side would stop each other's helpers.
 */
public final class PreparedPictures {
    /** Few enough for a small memory: each may hold one picture that has to be unpacked whole. */
    private static final int THREADS = 2;

    private final Path scratch;
    private final Map<Path, FutureTask<PreparedPicture>> byPath = new TreeMap<>();
    private final Map<Long, List<Path>> bySize = new TreeMap<>();
    private final Map<Bending, FutureTask<PreparedPicture>> bent = new LinkedHashMap<>();
    private int numbers;

    /**
     * The pictures of one run; none is prepared yet.
     *
     * @param scratch a folder of the caller's, which removes it with what is in it
     */
    public PreparedPictures(Path scratch) {
        this.scratch = scratch;
    }

    /** Prepares pictures that will be needed, several at a time: as they are, and bent. */
    public void ahead(Collection<ArtworkFile> artworks, Collection<Bending> bendings) throws IOException {
        ExecutorService pool = Executors.newFixedThreadPool(THREADS);
        try {
            for (ArtworkFile artwork : artworks) {
                pool.execute(task(artwork));
            }
            for (Bending bending : bendings) {
                pool.execute(task(bending));
            }
            for (ArtworkFile artwork : artworks) {
                get(artwork);
            }
            for (Bending bending : bendings) {
                get(bending);
            }
        } finally {
            pool.shutdownNow();
        }
    }

    PreparedPicture get(ArtworkFile artwork) throws IOException {
        return result(task(artwork), artwork);
    }

    PreparedPicture get(Bending bending) throws IOException {
        return result(task(bending), bending.artwork());
    }

    private static PreparedPicture result(FutureTask<PreparedPicture> task, ArtworkFile artwork) throws IOException {
        task.run();
        try {
            return task.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException(artwork.name());
        } catch (ExecutionException e) {
            throw new IOException(Words.say("artwork.unreadable-late", artwork.name()), e.getCause());
        }
    }

    private FutureTask<PreparedPicture> task(Bending bending) {
        return bent.computeIfAbsent(bending, any -> {
            int number = ++numbers;
            return new FutureTask<>(() -> BentPicture.of(bending, number, scratch));
        });
    }

    private FutureTask<PreparedPicture> task(ArtworkFile artwork) throws IOException {
        FutureTask<PreparedPicture> known = byPath.get(artwork.path());
        if (known != null) {
            return known;
        }
        List<Path> alike = bySize.computeIfAbsent(artwork.bytes(), size -> new ArrayList<>());
        for (Path other : alike) {
            if (Files.mismatch(other, artwork.path()) < 0) {
                FutureTask<PreparedPicture> same = byPath.get(other);
                if (same != null) {
                    byPath.put(artwork.path(), same);
                    return same;
                }
            }
        }
        alike.add(artwork.path());
        int number = ++numbers;
        FutureTask<PreparedPicture> task = new FutureTask<>(() -> prepare(artwork, number));
        byPath.put(artwork.path(), task);
        return task;
    }

    private PreparedPicture prepare(ArtworkFile artwork, int number) throws IOException {
        return switch (artwork.kind()) {
            case JPEG -> JpegPicture.of(artwork, number);
            case PNG -> PngPicture.of(artwork, number, scratch);
            case TIFF, WEBP, GIF, SVG, PDF -> throw new IOException(artwork.name()); // the shelf gives none so far
        };
    }
}
