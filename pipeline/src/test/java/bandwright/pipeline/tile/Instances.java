package bandwright.pipeline.tile;

import bandwright.rules.units.Length;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Published packing benchmarks as jobs without flags and gaps. The columns before bin_w name the instance; origin and
 * licence stand in SOURCES.md beside the files.
 */
final class Instances {
    private Instances() {}

    static Map<String, Job> read(String file, boolean edgeToEdge) {
        Map<String, Job> jobs = new LinkedHashMap<>();
        numbers(file, "bin_w").forEach((name, items) -> jobs.put(name, job(items, edgeToEdge)));
        return jobs;
    }

    /** Bound and best known of each instance. */
    static Map<String, int[]> bestKnown(String file) {
        Map<String, int[]> known = new LinkedHashMap<>();
        numbers(file, "dff_bound_R").forEach((name, rows) -> known.put(name, rows.get(0)));
        return known;
    }

    /** The rows of each instance, from the column of that header on. */
    private static Map<String, List<int[]>> numbers(String file, String firstColumn) {
        Map<String, List<int[]>> rows = new LinkedHashMap<>();
        try (InputStream in = Objects.requireNonNull(Instances.class.getResourceAsStream(file), file)) {
            List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
            int names = List.of(lines.get(0).split(",", -1)).indexOf(firstColumn);
            for (String line : lines.subList(1, lines.size())) {
                List<String> cells = List.of(line.split(",", -1));
                String name = String.join(" ", cells.subList(0, names));
                int[] numbers = cells.subList(names, cells.size()).stream()
                        .mapToInt(Integer::parseInt)
                        .toArray();
                rows.computeIfAbsent(name, n -> new ArrayList<>()).add(numbers);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }

    /** Rows of bin_w, bin_h, item, w, h, copies. */
    private static Job job(List<int[]> items, boolean edgeToEdge) {
        Map<List<Integer>, Integer> copies = new LinkedHashMap<>();
        items.forEach(item -> copies.merge(List.of(item[3], item[4]), item[5], Integer::sum));
        long width = Length.mm(items.get(0)[0]).nanometres();
        long height = Length.mm(items.get(0)[1]).nanometres();
        List<Kind> kinds = new ArrayList<>();
        copies.forEach((size, count) -> {
            Length w = Length.mm(size.get(0));
            Length h = Length.mm(size.get(1));
            List<Pose> poses = new ArrayList<>();
            addPose(poses, Rotation.R0, w.nanometres(), h.nanometres(), width, height);
            if (!w.equals(h)) {
                addPose(poses, Rotation.R90, h.nanometres(), w.nanometres(), width, height);
            }
            kinds.add(new Kind(FlatPattern.straight(w, h), poses, count));
        });
        return new Job(width, height, kinds, edgeToEdge);
    }

    private static void addPose(List<Pose> poses, Rotation turn, long across, long along, long width, long height) {
        if (across <= width && along <= height) {
            Span corner = new Span(0, 0, width - across, height - along);
            poses.add(new Pose(
                    turn, across, along, Span.NONE, corner, new Span(0, 0, across, along), false, Optional.empty()));
        }
    }
}
