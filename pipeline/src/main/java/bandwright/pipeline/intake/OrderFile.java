package bandwright.pipeline.intake;

import bandwright.pipeline.intake.format.Allowance;
import bandwright.pipeline.intake.format.Formats;
import bandwright.pipeline.intake.format.Grid;
import bandwright.pipeline.intake.format.Unreadable;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * One order file as it was read, not yet understood.
 *
 * @param name as the shop sees it
 * @param refusal why it can't be read, with the cure; empty where it is read
 */
record OrderFile(String name, List<Grid> grids, String refusal) {
    OrderFile {
        grids = List.copyOf(grids);
    }

    /** Reads all of them, in their order: the only place of intake that touches the disk. */
    static List<OrderFile> read(List<Path> files, HeaderSearch headers) {
        Map<String, Integer> namesakes = new TreeMap<>();
        files.forEach(file -> namesakes.merge(Inbox.name(file), 1, Integer::sum));
        Allowance allowance = new Allowance();
        List<OrderFile> read = new ArrayList<>();
        for (Path file : files) {
            boolean isOnly = namesakes.getOrDefault(Inbox.name(file), 0) == 1;
            read.add(read(file, isOnly ? Inbox.name(file) : file.toString(), allowance, headers));
        }
        return Collections.unmodifiableList(read);
    }

    private static OrderFile read(Path file, String name, Allowance allowance, HeaderSearch headers) {
        try {
            return new OrderFile(name, Formats.read(file, allowance, headers::score), "");
        } catch (Unreadable e) {
            return new OrderFile(name, List.of(), e.getMessage() + " " + e.cure());
        }
    }
}
