package bandwright.rules.table;

import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The faults found so far. A wrong cell is noted here and reads as a stand-in value, so that the rest of its row is
 * still looked at; a row with a fault is never used.
 */
public final class Faults {
    private final List<Fault> all = new ArrayList<>();
    private final Set<Place> places = new HashSet<>();
    private final Set<Place> rows = new HashSet<>();

    /** Notes one fault; its two sentences are {@code fault.<name>} and {@code fault.<name>.cure}. */
    public void add(Place place, String name, Object... about) {
        Object[] shown = Arrays.stream(about)
                .map(one -> one instanceof String text ? Quoted.oneLine(text) : one)
                .toArray();
        all.add(new Fault(place, Words.say("fault." + name, shown), Words.say("fault." + name + ".cure", shown)));
        places.add(place);
        rows.add(rowOf(place));
    }

    /** Whether nothing is wrong at exactly that place. */
    public boolean isSound(Place place) {
        return !places.contains(place);
    }

    /** Whether nothing is wrong in the row of that place. */
    public boolean isRowSound(Place place) {
        return !rows.contains(rowOf(place));
    }

    /** By table, row and column. */
    public List<Fault> sorted() {
        return all.stream()
                .sorted(Comparator.comparing((Fault fault) -> fault.place().file())
                        .thenComparing(fault -> fault.place().row())
                        .thenComparing(fault -> fault.place().column())
                        .thenComparing(Fault::message))
                .toList();
    }

    private static Place rowOf(Place place) {
        return new Place(place.file(), place.row(), "");
    }
}
