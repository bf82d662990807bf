package bandwright.rules.units;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The unit that a bare number in a cell is in, and that a shop reads first. */
public enum LengthUnit {
    IN("in", 25_400_000, List.of("in", "inch", "inches", "\"", "\u2033", "\u201d", "''")),
    MM("mm", 1_000_000, List.of("mm", "millimetre", "millimetres", "millimeter", "millimeters")),
    CM("cm", 10_000_000, List.of("cm", "centimetre", "centimetres", "centimeter", "centimeters"));

    private final String word;
    private final long nanometres;

    @SuppressWarnings("ImmutableEnumChecker") // List.of can not be changed
    private final List<String> spellings;

    LengthUnit(String word, long nanometres, List<String> spellings) {
        this.word = word;
        this.nanometres = nanometres;
        this.spellings = spellings;
    }

    public String word() {
        return word;
    }

    /** The unit that goes by that spelling, in small letters. */
    public static Optional<LengthUnit> find(String spelling) {
        return Arrays.stream(values())
                .filter(unit -> unit.spellings.contains(spelling))
                .findFirst();
    }

    /** So many of this unit, exactly to the nanometre: 9 7/8 in is 250.825 mm. */
    public Length of(Amount amount) {
        return new Length(amount.times(nanometres).longValueExact());
    }
}
