package bandwright.pipeline.write.pdf;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.vector.InkedShape;
import bandwright.pipeline.artwork.vector.VectorArtwork;
import bandwright.rules.paper.PrinterProfile;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    private final Map<Inked<Path>, FutureTask<PreparedPicture>> byPath = new HashMap<>();
    private final Map<Inked<Long>, List<Path>> bySize = new HashMap<>();
    private final Map<Inked<Bending>, FutureTask<PreparedPicture>> bent = new HashMap<>();
    private final Map<Path, Optional<List<InkedShape>>> shapes = new TreeMap<>();
    private final Map<Path, Path> vectors = new TreeMap<>();
    private int numbers;

    /** Something for one printer; without a profile as its file has it. */
    private record Inked<T>(T what, Optional<PrinterProfile> printer) {}

    /**
     * The pictures of one run; none is prepared yet.
     *
     * @param scratch a folder of the caller's, which removes it with what is in it
     */
    public PreparedPictures(Path scratch) {
        this.scratch = scratch;
    }

    /** Prepares pictures that a printer will need, several at a time: as they are, and bent. */
    public void ahead(Collection<ArtworkFile> artworks, Collection<Bending> bendings, Optional<PrinterProfile> printer)
            throws IOException {
        ExecutorService pool = Executors.newFixedThreadPool(THREADS);
        try {
            for (ArtworkFile artwork : artworks) {
                pool.execute(task(artwork, printer));
            }
            for (Bending bending : bendings) {
                pool.execute(task(bending, printer));
            }
            for (ArtworkFile artwork : artworks) {
                get(artwork, printer);
            }
            for (Bending bending : bendings) {
                get(bending, printer);
            }
        } finally {
            pool.shutdownNow();
        }
    }

    /**
     * The shapes of vector artwork, to be bent one by one; empty where only pixels can be bent: of a photograph, and of a
     * drawing with gradients, pictures, masks or blended layers.
     */
    public synchronized Optional<List<InkedShape>> shapes(ArtworkFile artwork) throws IOException {
        if (!artwork.kind().isVector()) {
            return Optional.empty();
        }
        Path path = first(artwork);
        Optional<List<InkedShape>> known = shapes.get(path);
        if (known == null) {
            try (VectorArtwork vector = VectorArtwork.open(artwork)) {
                known = vector.shapes();
            }
            shapes.put(path, known);
        }
        return known;
    }

    /** The first vector artwork that has the same bytes. */
    synchronized Path first(ArtworkFile artwork) throws IOException {
        Path known = vectors.get(artwork.path());
        if (known != null) {
            return known;
        }
        for (Path other : List.copyOf(vectors.values())) {
            if (Files.mismatch(other, artwork.path()) < 0) {
                vectors.put(artwork.path(), other);
                return other;
            }
        }
        vectors.put(artwork.path(), artwork.path());
        return artwork.path();
    }

    PreparedPicture get(ArtworkFile artwork, Optional<PrinterProfile> printer) throws IOException {
        return result(task(artwork, printer), artwork);
    }

    PreparedPicture get(Bending bending, Optional<PrinterProfile> printer) throws IOException {
        return result(task(bending, printer), bending.artwork());
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

    private FutureTask<PreparedPicture> task(Bending bending, Optional<PrinterProfile> printer) {
        return bent.computeIfAbsent(new Inked<>(bending, printer), any -> {
            int number = ++numbers;
            return new FutureTask<>(() -> BentPicture.of(bending, number, printer, scratch));
        });
    }

    private FutureTask<PreparedPicture> task(ArtworkFile artwork, Optional<PrinterProfile> printer) throws IOException {
        Inked<Path> key = new Inked<>(artwork.path(), printer);
        FutureTask<PreparedPicture> known = byPath.get(key);
        if (known != null) {
            return known;
        }
        List<Path> alike = bySize.computeIfAbsent(new Inked<>(artwork.bytes(), printer), size -> new ArrayList<>());
        for (Path other : alike) {
            if (Files.mismatch(other, artwork.path()) < 0) {
                FutureTask<PreparedPicture> same = byPath.get(new Inked<>(other, printer));
                if (same != null) {
                    byPath.put(key, same);
                    return same;
                }
            }
        }
        alike.add(artwork.path());
        int number = ++numbers;
        FutureTask<PreparedPicture> task = new FutureTask<>(() -> prepare(artwork, number, printer));
        byPath.put(key, task);
        return task;
    }

    private PreparedPicture prepare(ArtworkFile artwork, int number, Optional<PrinterProfile> printer)
            throws IOException {
        if (printer.isPresent()) {
            return ConvertedPicture.of(artwork, number, printer.get(), scratch);
        }
        return switch (artwork.kind()) {
            case JPEG -> JpegPicture.of(artwork, number);
            case PNG -> PngPicture.of(artwork, number, scratch);
            case TIFF, WEBP, GIF -> UnpackedPicture.of(artwork, number, scratch);
            case SVG, PDF -> throw new IllegalArgumentException(artwork.name()); // a form of its document, not pixels
        };
    }
}
