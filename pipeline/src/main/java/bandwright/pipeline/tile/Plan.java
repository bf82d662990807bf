package bandwright.pipeline.tile;

import java.util.ArrayList;
import java.util.List;

/** Layouts and how many sheets of each. */
record Plan(List<Batch> batches) {
    /** So many sheets of one layout. */
    record Batch(Layout layout, int sheets) {}

    Plan {
        batches = List.copyOf(batches);
    }

    int sheets() {
        return batches.stream().mapToInt(Batch::sheets).sum();
    }

    /** Fewest sheets, then fewest different layouts. */
    boolean isBetterThan(Plan other) {
        int mine = sheets();
        int others = other.sheets();
        return mine < others || (mine == others && batches.size() < other.batches.size());
    }

    Plan and(Plan other) {
        List<Batch> all = new ArrayList<>(batches);
        all.addAll(other.batches);
        return new Plan(all);
    }

    /** Every sheet by itself. */
    List<Layout> layouts() {
        List<Layout> all = new ArrayList<>();
        for (Batch batch : batches) {
            for (int i = 0; i < batch.sheets(); i++) {
                all.add(batch.layout());
            }
        }
        return all;
    }
}
