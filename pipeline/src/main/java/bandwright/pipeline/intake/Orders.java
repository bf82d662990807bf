package bandwright.pipeline.intake;

import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.SkippedRow;
import bandwright.pipeline.rows.Row;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The whole inbox, read: every row of it stands in exactly one of these lists. */
public record Orders(
        List<InboxFile> files, List<OrderLine> lines, List<HeldRow> held, List<SkippedRow> skipped, List<Row> empty) {
    public Orders {
        files = List.copyOf(files);
        lines = List.copyOf(lines);
        held = List.copyOf(held);
        skipped = List.copyOf(skipped);
        empty = List.copyOf(empty);
    }

    public boolean isNothingReadable() {
        return files.stream().noneMatch(file -> file.state() == InboxFile.State.READ);
    }

    /**
     * The files of which no sheet could be read as orders, one entry each, with reason and cure. A sheet without a
     * header beside one that has it is harmless and not here.
     */
    public List<InboxFile> unread() {
        Set<String> read = files.stream()
                .filter(file -> file.state() == InboxFile.State.READ)
                .map(InboxFile::file)
                .collect(Collectors.toSet());
        Map<String, InboxFile> unread = new LinkedHashMap<>();
        files.stream()
                .filter(file -> !read.contains(file.file()))
                .forEach(file -> unread.merge(
                        file.file(), file, (one, next) -> one.state() == InboxFile.State.HIDDEN ? next : one));
        return List.copyOf(unread.values());
    }
}
