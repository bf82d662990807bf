package bandwright.pipeline.tile;

import bandwright.rules.units.Length;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Published packing benchmarks as jobs without flags and gaps. The columns before bin_w name the instance; origin and
 * licence stand in SOURCES.md beside the files.
 */
final class Instances {
    private Instances() {}

    static Map<String, Job> read(String file, boolean edgeToEdge) {
        Map<String, List<int[]>> rows = new LinkedHashMap<>();
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(Instances.class.getResourceAsStream(file), file), StandardCharsets.UTF_8))) {
            int names = List.of(reader.readLine().split(",")).indexOf("bin_w");
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                String[] cells = line.split(",");
                int[] numbers = new int[cells.length - names];
                for (int i = 0; i < numbers.length; i++) {
                    numbers[i] = Integer.parseInt(cells[names + i]);
                }
                String name = String.join(" ", List.of(cells).subList(0, names));
                rows.computeIfAbsent(name, n -> new ArrayList<>()).add(numbers);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Map<String, Job> jobs = new LinkedHashMap<>();
        rows.forEach((name, items) -> jobs.put(name, job(items, edgeToEdge)));
        return jobs;
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
            kinds.add(new Kind(w, h, poses, count));
        });
        return new Job(width, height, kinds, edgeToEdge);
    }

    private static void addPose(List<Pose> poses, Rotation turn, long across, long along, long width, long height) {
        if (across <= width && along <= height) {
            Span corner = new Span(0, 0, width - across, height - along);
            poses.add(new Pose(turn, across, along, Span.NONE, corner, new Span(0, 0, across, along), false));
        }
    }
}
