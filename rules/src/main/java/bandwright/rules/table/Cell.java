package bandwright.rules.table;

import bandwright.rules.day.Break;
import bandwright.rules.units.Length;
import bandwright.rules.units.Rgb;
import bandwright.rules.units.ShopUnits;
import bandwright.rules.units.Temperature;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * One cell and what it can be read as. An empty cell reads as nothing; a wrong one too, and its fault is noted:
 * {@code cell.length(Plausible.HANDLE)} of "1 1/4 in" is 31.75 mm.
 */
public record Cell(Place place, String text, ShopUnits units, Faults faults) {
    private static final Pattern BAR = Pattern.compile("\\|");
    private static final Pattern CLOCK = Pattern.compile("([01]?\\d|2[0-3]):([0-5]\\d)");
    private static final Pattern COLOUR = Pattern.compile("#(?:[0-9a-fA-F]{3}|[0-9a-fA-F]{6})");
    private static final Pattern MONEY = Pattern.compile("\\d{1,9}(?:\\.\\d{1,6})?");

    public boolean isEmpty() {
        return text.isEmpty();
    }

    /** Notes a fault of this cell; what it says begins with the cell's text. */
    public <T> Optional<T> fault(String name, Object... about) {
        Object[] all = new Object[about.length + 1];
        all[0] = Quoted.text(text);
        System.arraycopy(about, 0, all, 1, about.length);
        faults.add(place, name, all);
        return Optional.empty();
    }

    private <T> Optional<T> unlessEmpty(Function<Cell, Optional<T>> reader) {
        return isEmpty() ? Optional.empty() : reader.apply(this);
    }

    /** This cell, which must not be empty. */
    public Cell needed() {
        if (isEmpty()) {
            fault("needed", place.column());
        }
        return this;
    }

    /** The values between upright bars, without empty ones. */
    public List<String> list() {
        return BAR.splitAsStream(text)
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .toList();
    }

    /** One of a closed list of words. */
    public <W extends Word> Optional<W> word(W[] all) {
        return oneOf(List.of(all), Word::word);
    }

    public <T> Optional<T> oneOf(List<T> all, Function<T, String> word) {
        if (isEmpty()) {
            return Optional.empty();
        }
        Optional<T> found =
                all.stream().filter(one -> Names.same(word.apply(one), text)).findFirst();
        if (found.isPresent()) {
            return found;
        }
        List<String> words = all.stream().map(word).toList();
        String listed = String.join(", ", words);
        Optional<String> near = Nearest.of(text, words);
        return near.isPresent() ? fault("word.near", near.get(), listed) : fault("word", listed);
    }

    /** Yes or no; empty = no. */
    public boolean yes() {
        return oneOf(List.of("yes", "no"), word -> word).filter("yes"::equals).isPresent();
    }

    public Optional<Length> length(Plausible plausible) {
        return unlessEmpty(cell -> LengthCell.read(cell, plausible));
    }

    public Optional<Length> typeSize() {
        return unlessEmpty(LengthCell::typeSize);
    }

    public Optional<Temperature> temperature() {
        return unlessEmpty(TemperatureCell::read);
    }

    /** How fast it gets warmer or cooler: degrees Celsius a minute. */
    public Optional<Double> rate() {
        return unlessEmpty(RateCell::read);
    }

    /** Whole seconds; empty = 0. */
    public int seconds() {
        return unlessEmpty(NumberCell::seconds).orElse(0);
    }

    public Optional<Integer> integer(int least, int most) {
        return integer("", least, most);
    }

    public Optional<Integer> integer(String unit, int least, int most) {
        return unlessEmpty(cell -> NumberCell.integer(cell, unit, least, most));
    }

    public OptionalInt limit(int least, int most) {
        return integer(least, most).map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    public Optional<Double> number(String unit, double least, double most) {
        return unlessEmpty(cell -> NumberCell.number(cell, unit, least, most));
    }

    public OptionalDouble limit(String unit, double least, double most) {
        return number(unit, least, most).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    public Optional<Double> percent(double least, double most) {
        return unlessEmpty(cell -> NumberCell.percent(cell, least, most));
    }

    public Optional<Double> share(double mostPercent) {
        return unlessEmpty(cell -> NumberCell.share(cell, mostPercent));
    }

    /** What something costs: a plain number without a sign of money. */
    public Optional<BigDecimal> cost() {
        if (isEmpty()) {
            return Optional.empty();
        }
        return MONEY.matcher(text).matches() ? Optional.of(new BigDecimal(text)) : fault("cost");
    }

    /** A colour as on the web: #1A2B3C or #FFF. */
    public Optional<Rgb> colour() {
        if (isEmpty()) {
            return Optional.empty();
        }
        if (!COLOUR.matcher(text).matches()) {
            return COLOUR.matcher("#" + text).matches() ? fault("colour.hash") : fault("colour");
        }
        int value = Integer.parseInt(text.substring(1), 16);
        return Optional.of(
                text.length() == 4
                        ? new Rgb((value >> 8 & 15) * 17, (value >> 4 & 15) * 17, (value & 15) * 17)
                        : new Rgb(value >> 16, value >> 8 & 255, value & 255));
    }

    /** A day as ISO 8601 writes it: 2026-03-02. */
    public Optional<LocalDate> date() {
        try {
            return isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text));
        } catch (DateTimeException e) {
            return fault("date");
        }
    }

    /** A time of day: 09:00. */
    public Optional<LocalTime> clock() {
        Optional<LocalTime> clock = clock(text);
        return isEmpty() || clock.isPresent() ? clock : fault("clock");
    }

    static Optional<LocalTime> clock(String text) {
        var form = CLOCK.matcher(text);
        return form.matches()
                ? Optional.of(LocalTime.of(Integer.parseInt(form.group(1)), Integer.parseInt(form.group(2))))
                : Optional.empty();
    }

    /** The breaks of a day, in their order: 12:30-13:00. */
    public List<Break> breaks() {
        return BreaksCell.read(this);
    }

    /** Another text that stands in the same cell: a part of it. */
    public Cell with(String part) {
        return new Cell(place, part, units, faults);
    }

    /** Pairs like Size=15 oz|Handle=Pink; a part without its sign is a fault. */
    public List<Pair> pairs() {
        List<Pair> pairs = new ArrayList<>();
        for (String part : list()) {
            int sign = part.indexOf('=');
            if (sign > 0) {
                pairs.add(new Pair(
                        part.substring(0, sign).strip(),
                        part.substring(sign + 1).strip()));
            } else {
                fault("pair", Quoted.text(part));
            }
        }
        return pairs;
    }

    /** One Key=Value of a cell. */
    public record Pair(String key, String value) {}
}
