package bandwright.rules.table;

import bandwright.rules.day.Break;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the breaks of a day: 12:30-13:00, several with | between. */
final class BreaksCell {
    private BreaksCell() {}

    /** In the order of the day; those that touch or overlap are faults. */
    static List<Break> read(Cell cell) {
        List<Break> breaks = new ArrayList<>();
        for (String part : cell.list()) {
            Optional<Break> one = one(part);
            if (one.isEmpty()) {
                cell.fault("break", Quoted.text(part));
            }
            one.ifPresent(breaks::add);
        }
        breaks.sort((one, other) -> one.from().compareTo(other.from()));
        for (int i = 1; i < breaks.size(); i++) {
            if (!breaks.get(i).from().isAfter(breaks.get(i - 1).to())) {
                cell.fault(
                        "break.overlap", breaks.get(i - 1).to(), breaks.get(i).from());
            }
        }
        return List.copyOf(breaks);
    }

    private static Optional<Break> one(String part) {
        String[] ends = part.replace('\u2013', '-').split("-", -1);
        if (ends.length != 2) {
            return Optional.empty();
        }
        Optional<LocalTime> from = Cell.clock(ends[0].strip());
        Optional<LocalTime> to = Cell.clock(ends[1].strip());
        return from.isPresent() && to.isPresent() && from.get().isBefore(to.get())
                ? Optional.of(new Break(from.get(), to.get()))
                : Optional.empty();
    }
}
