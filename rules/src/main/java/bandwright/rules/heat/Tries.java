package bandwright.rules.heat;

import bandwright.rules.units.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The tries by which a shop finds the setting of a blank with five of them at most, as every try spoils one: first three
 * temperatures at the usual time, then a shorter and a longer time at whichever temperature came out best. 180 to 200 C
 * and 150 to 240 s: 180, 190 and 200 C for 180 s; then 150 and 240 s. Where only the time may vary there is no second
 * stage; where nothing may, one piece confirms the figures.
 */
public record Tries(List<Try> first, List<Try> second) {
    /** Degrees Celsius that two tries must lie apart to be told from what a thermostat does by itself. [J] */
    static final double TEMPERATURE_STEP = 3;

    /** Two times must lie that share of the usual one apart, or no one could see it. [J] */
    static final double TIME_STEP = 0.05;

    private static final double LEAST_TIME_STEP = 5;

    public Tries {
        first = List.copyOf(first);
        second = List.copyOf(second);
    }

    public static Tries of(TryRange range) {
        List<Double> heats = spots(
                range.least().celsius(), range.usual().celsius(), range.most().celsius(), TEMPERATURE_STEP);
        double step = Math.max(LEAST_TIME_STEP, range.usualSeconds() * TIME_STEP);
        List<Integer> times = spots(range.leastSeconds(), range.usualSeconds(), range.mostSeconds(), step).stream()
                .map(seconds -> (int) Math.round(seconds))
                .toList();
        if (heats.size() == 1) {
            Optional<Temperature> only = Optional.of(Temperature.celsius(heats.get(0)));
            return new Tries(
                    ordered(times.stream().map(time -> new Try(1, only, time)).toList(), 1), List.of());
        }
        List<Try> first = ordered(
                heats.stream()
                        .map(heat -> new Try(1, Optional.of(Temperature.celsius(heat)), range.usualSeconds()))
                        .toList(),
                1);
        List<Try> second = times.stream()
                .filter(time -> Math.abs(time - range.usualSeconds()) >= step)
                .map(time -> new Try(1, Optional.empty(), time))
                .toList();
        return new Tries(first, ordered(second, first.size() + 1));
    }

    /** So that the machine waits least, and numbered in that order. */
    static List<Try> ordered(List<Try> tries, int firstNumber) {
        List<Try> sorted = new ArrayList<>(tries);
        sorted.sort(Try.LEAST_WAITING);
        for (int i = 0; i < sorted.size(); i++) {
            sorted.set(i, sorted.get(i).numbered(firstNumber + i));
        }
        return sorted;
    }

    /** Both ends and the usual figure; where that lies at an end, the middle; where they lie too close, fewer. */
    private static List<Double> spots(double least, double usual, double most, double step) {
        if (most - least < step) {
            return List.of(usual);
        }
        boolean isAmid = usual - least >= step && most - usual >= step;
        double middle = isAmid ? usual : (least + most) / 2;
        return middle - least >= step ? List.of(least, middle, most) : List.of(least, most);
    }

    /** All of them, in order. */
    public List<Try> all() {
        List<Try> all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }

    /** Whether nothing is varied: one piece shows whether the figures hold. */
    public boolean isOne() {
        return first.size() == 1 && second.isEmpty();
    }

    /** Whether the times are what the first stage is about. */
    public boolean variesOnlyTime() {
        return first.size() > 1
                && first.stream().map(Try::temperature).distinct().count() == 1;
    }

    /** The largest step from one try to the next, in degrees Celsius. */
    public double largestStep() {
        ToDoubleFunction<Integer> step = i -> celsius(first.get(i)) - celsius(first.get(i - 1));
        double largest = 0;
        for (int i = 1; i < first.size(); i++) {
            largest = Math.max(largest, step.applyAsDouble(i));
        }
        return largest;
    }

    private static double celsius(Try one) {
        return one.temperature().map(Temperature::celsius).orElseThrow();
    }
}
