package bandwright.pipeline.artwork;

import bandwright.pipeline.artwork.ShelfListing.Entry;
import bandwright.rules.table.Names;
import bandwright.rules.table.Nearest;
import java.io.IOException;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/**
 * The artwork folder: the one door for names of pictures. {@code find(" Birds/HERON.jpg ")} finds birds/heron.jpg if
 * only one file's name is alike; a name that leads out of the folder is refused, and each file's header is read once.
 */
public final class ArtworkShelf {
    private static final String ORDERS = "orders";
    private static final Pattern UNSAFE = Pattern.compile("[^A-Za-z0-9._-]");

    private final List<Entry> entries;
    private final Map<String, Entry> exact = new HashMap<>();
    private final Map<String, List<Entry>> folded = new HashMap<>();
    /** Files of the orders folder by their stems as ids write them. */
    private final Map<String, List<Entry>> byOrder = new HashMap<>();

    private final Map<String, Found> answers = new ConcurrentHashMap<>();
    private final Map<String, Found> probed = new ConcurrentHashMap<>();

    private ArtworkShelf(List<Entry> entries) {
        this.entries = List.copyOf(entries);
        for (Entry entry : entries) {
            String name = Normalizer.normalize(entry.name(), Normalizer.Form.NFC);
            exact.putIfAbsent(name, entry);
            folded.computeIfAbsent(Names.fold(name), n -> new ArrayList<>()).add(entry);
            if (Names.same(entry.folder(), ORDERS)) {
                byOrder.computeIfAbsent(orderKey(entry.stem()), n -> new ArrayList<>())
                        .add(entry);
            }
        }
    }

    /** The shelf of a folder; a folder that isn't there is an empty shelf. */
    public static ArtworkShelf open(Path folder) throws IOException {
        return new ArtworkShelf(ShelfListing.of(folder));
    }

    /** The names of all files, sorted. */
    public List<String> list() {
        return entries.stream().map(Entry::name).toList();
    }

    /** The picture of that name. */
    public Found find(String name) {
        return answers.computeIfAbsent(name, this::answer);
    }

    /** The picture that somebody put there for one order or one of its lines; it beats the design's own. */
    public Optional<Found> findForOrder(String order, String line) {
        Optional<Found> ofLine = forOrder(order + "-" + line);
        return ofLine.isPresent() ? ofLine : forOrder(order);
    }

    private Optional<Found> forOrder(String stem) {
        List<Entry> files = byOrder.getOrDefault(orderKey(stem), List.of());
        if (files.isEmpty()) {
            return Optional.empty();
        }
        Entry first = files.get(0);
        return Optional.of(files.size() == 1 ? probe(first) : new Found.Refused(first.name(), Flaw.SEVERAL));
    }

    private static String orderKey(String text) {
        return Names.fold(UNSAFE.matcher(text.strip()).replaceAll("_"));
    }

    private Found answer(String name) {
        AskedName asked = AskedName.of(name);
        if (asked.flaw().isPresent()) {
            return new Found.Refused(asked.text(), asked.flaw().get());
        }
        List<Entry> alike = folded.getOrDefault(Names.fold(asked.text()), List.of());
        Entry found = exact.get(asked.text());
        if (found == null && alike.size() == 1) {
            found = alike.get(0);
        }
        if (found != null) {
            return probe(found);
        }
        if (entries.stream().anyMatch(e -> e.outside() && asked.text().startsWith(e.name() + "/"))) {
            return new Found.Refused(asked.text(), Flaw.OUTSIDE);
        }
        return new Found.Missing(asked.text(), nearest(asked.text(), alike));
    }

    private Found probe(Entry entry) {
        return probed.computeIfAbsent(
                entry.name(),
                name -> entry.outside()
                        ? new Found.Refused(name, Flaw.OUTSIDE)
                        : new Probe(name, entry.path()).found());
    }

    /** Names that differ in case only, then those with another ending or folder, then the nearest by its letters. */
    private List<String> nearest(String asked, List<Entry> alike) {
        Set<String> names = new LinkedHashSet<>();
        alike.forEach(entry -> names.add(entry.name()));
        String stem = Names.fold(new Entry(asked, Path.of(""), false).stem());
        entries.stream()
                .filter(entry -> Names.fold(entry.stem()).equals(stem))
                .forEach(entry -> names.add(entry.name()));
        Nearest.of(asked, list()).ifPresent(names::add);
        return List.copyOf(names);
    }
}
