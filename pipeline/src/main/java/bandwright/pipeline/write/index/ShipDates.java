package bandwright.pipeline.write.index;

import bandwright.pipeline.RowEnd;
import bandwright.pipeline.RowFate;
import bandwright.pipeline.RowFates;
import bandwright.pipeline.Run;
import bandwright.pipeline.intake.OrderLine;
import bandwright.rules.words.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Which orders are late or due today or tomorrow, those that wait for a person too. On 2 March 1 March is late, 2 and 3
 * March are due.
 *
 * @param orders by their days
 */
record ShipDates(LocalDate today, Map<LocalDate, List<Due>> orders) implements Section {
    /** An order and the earliest day that any of its rows asks for. */
    record Due(String order, LocalDate day, boolean isHeld) {
        private Due and(Due other) {
            return new Due(order, day.isBefore(other.day) ? day : other.day, isHeld || other.isHeld);
        }

        private String words() {
            return isHeld ? Words.say("index.due-held", order) : order;
        }
    }

    static ShipDates of(Run run) {
        Map<List<String>, Due> orders = new LinkedHashMap<>();
        for (RowFate fate : RowFates.of(run)) {
            Optional<OrderLine> line = fate.line().filter(any -> isOpen(fate.end()));
            line.flatMap(OrderLine::shipBy).ifPresent(day -> {
                List<String> key = List.of(line.map(OrderLine::site).orElse(""), fate.order());
                orders.merge(key, new Due(fate.order(), day, !fate.held().isEmpty()), Due::and);
            });
        }
        LocalDate today = run.id().date();
        Map<LocalDate, List<Due>> byDay = new TreeMap<>();
        for (Due due : orders.values()) {
            if (!due.day().isAfter(today.plusDays(1))) {
                byDay.computeIfAbsent(due.day(), day -> new ArrayList<>()).add(due);
            }
        }
        return new ShipDates(today, byDay);
    }

    private static boolean isOpen(RowEnd end) {
        return end == RowEnd.MADE || end == RowEnd.PART || end == RowEnd.HELD;
    }

    @Override
    public String name() {
        return "dates";
    }

    @Override
    public boolean isEmpty() {
        return orders.isEmpty();
    }

    /** "late 2, due today 5, due tomorrow 1". */
    String summary() {
        Map<String, Integer> counts = new LinkedHashMap<>();
        orders.forEach((day, due) -> counts.merge(state(day), due.size(), Integer::sum));
        return counts.entrySet().stream()
                .map(count -> Words.say(count.getKey(), count.getValue()))
                .collect(Collectors.joining(", "));
    }

    private String state(LocalDate day) {
        if (day.isBefore(today)) {
            return "index.late";
        }
        return day.equals(today) ? "index.today" : "index.tomorrow";
    }

    @Override
    public void writeTo(Html html) {
        html.line("p", Words.say("index.dates-how"), "class", "lead").open("ul", "class", "rows");
        orders.forEach((day, due) -> {
            html.open("li").line("h3", Words.say(state(day) + "-day", day));
            html.line("p", due.stream().map(Due::words).collect(Collectors.joining(", ")))
                    .close("li");
        });
        html.close("ul");
    }
}
