package bandwright.rules.blanks;

import bandwright.rules.units.Length;

/** One limit of a heat source that cut a band short: by which column, what it would have been, what it is. */
public record BandLimit(Column column, Length wanted, Length given) {
    /** The column of heat-sources.csv. */
    public enum Column {
        MAX_BAND_HEIGHT,
        MAX_BAND_WIDTH;

        public String key() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }
}
