package bandwright.rules.units;

/** The unit that a bare temperature in a cell is in, and that a shop reads first. */
public enum TemperatureUnit {
    C,
    F
}
