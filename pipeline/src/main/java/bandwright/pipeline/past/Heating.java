package bandwright.pipeline.past;

import bandwright.rules.heat.PressSetting;
import bandwright.rules.table.Names;
import bandwright.rules.units.Temperature;
import java.util.Comparator;
import java.util.Optional;

/**
 * How hot, how long and how hard a piece was pressed, as the ledger compares it: tenths of a degree, and pressure in
 * small letters, so that 385 F and 196.1 C, "Medium" and "medium" are one setting.
 */
public record Heating(Temperature temperature, int seconds, String pressure) implements Comparable<Heating> {
    private static final Comparator<Heating> GENTLEST_FIRST = Comparator.comparing(Heating::temperature)
            .thenComparing(Heating::seconds)
            .thenComparing(Heating::pressure);

    public Heating {
        temperature = Temperature.celsius(temperature.celsius1().doubleValue());
        pressure = Names.fold(pressure);
    }

    /** Empty for a row of the settings that names no temperature, as nothing is pressed with it. */
    public static Optional<Heating> of(PressSetting setting) {
        return setting.temperature()
                .map(temperature -> new Heating(temperature, setting.timeSeconds(), setting.pressure()));
    }

    @Override
    public int compareTo(Heating other) {
        return GENTLEST_FIRST.compare(this, other);
    }
}
