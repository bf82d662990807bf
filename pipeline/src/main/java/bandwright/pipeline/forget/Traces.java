package bandwright.pipeline.forget;

import bandwright.pipeline.intake.Inbox;
import bandwright.pipeline.intake.format.Allowance;
import bandwright.pipeline.intake.format.Formats;
import bandwright.pipeline.intake.format.Unreadable;
import bandwright.pipeline.ledger.Ledger;
import bandwright.pipeline.rows.Cell;
import bandwright.pipeline.rows.PlainName;
import bandwright.pipeline.write.workbook.HeldWithout;
import bandwright.rules.table.Names;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.Stream;

/** Where an order stands: the outbox's runs, and, if it is named, the inbox with what was put away in it. */
public final class Traces {
    private static final int DEPTH = 8;

    private final String order;
    private final List<Trace> found = new ArrayList<>();

    private Traces(String order) {
        this.order = order;
    }

    /**
     * All of them, run folders first.
     *
     * @param runs the runs that made or held it, as the ledger knows
     */
    public static List<Trace> of(
            String order, Set<String> runs, Path outbox, Optional<Path> inbox, Optional<Path> artwork)
            throws IOException {
        Traces traces = new Traces(order);
        for (String run : runs) {
            traces.run(outbox.resolve(run));
        }
        for (Path old : list(outbox, (path, name) -> name.startsWith(Ledger.FILE + ".version-"))) {
            traces.found.add(new Trace(old, Trace.Kind.OLD_LEDGER));
        }
        if (inbox.isPresent()) {
            traces.orderFiles(inbox.get());
        }
        Optional<Path> pictures = artwork.or(() -> inbox.map(folder -> folder.resolve("artwork")));
        if (pictures.isPresent()) {
            traces.pictures(pictures.get().resolve("orders"));
        }
        return List.copyOf(traces.found);
    }

    private void run(Path folder) throws IOException {
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        Path held = folder.resolve("held.xlsx");
        boolean hasOthers = Files.exists(held) && HeldWithout.hasOthers(held, order);
        found.add(new Trace(folder, hasOthers ? Trace.Kind.RUN_WITH_HELD : Trace.Kind.RUN));
    }

    private void orderFiles(Path inbox) throws IOException {
        Path done = inbox.resolve("done");
        Path artwork = inbox.resolve("artwork");
        try (Stream<Path> all = Files.walk(inbox, DEPTH)) {
            for (Path file : all.filter(path -> !path.startsWith(artwork) && Inbox.hasEnding(path))
                    .filter(path -> Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS))
                    .sorted()
                    .toList()) {
                orderFile(file, file.startsWith(done) ? Trace.Kind.DONE : Trace.Kind.WAITING);
            }
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private void orderFile(Path file, Trace.Kind kind) {
        try {
            boolean holds = Formats.read(file, new Allowance(), this::score).stream()
                    .flatMap(grid -> grid.rows().stream())
                    .anyMatch(row -> score(row.cells()) > 0);
            if (holds) {
                found.add(new Trace(file, kind));
            }
        } catch (Unreadable e) {
            found.add(new Trace(file, Trace.Kind.UNREAD));
        }
    }

    /** More than nothing for a row that has the order's number in a cell of its own: so the right separator is found. */
    private int score(List<Cell> cells) {
        return cells.stream().anyMatch(cell -> Names.same(cell.text(), order)) ? cells.size() : 0;
    }

    /** orders/0071.jpg and orders/0071-2.jpg, not orders/00711.jpg. */
    private void pictures(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return;
        }
        String plain = PlainName.of(order);
        for (Path picture : list(folder, (path, name) -> isOf(name, order) || isOf(name, plain))) {
            found.add(new Trace(picture, Trace.Kind.PICTURE));
        }
    }

    private static boolean isOf(String name, String order) {
        int dot = name.lastIndexOf('.');
        String stem = dot > 0 ? name.substring(0, dot) : name;
        return Names.same(stem, order)
                || (stem.length() > order.length()
                        && Names.same(stem.substring(0, order.length()), order)
                        && stem.charAt(order.length()) == '-');
    }

    private static List<Path> list(Path folder, BiPredicate<Path, String> wanted) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(path -> Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS))
                    .filter(path -> wanted.test(path, path.getFileName().toString()))
                    .sorted()
                    .toList();
        }
    }
}
