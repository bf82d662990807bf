package bandwright.rules.designs;

import java.util.List;

/** A font of the shop's own: a row of fonts.csv. The file lies beside the tables. */
public record FontFile(String id, String file, String note) {
    /** The ids of the fonts that come with the program. */
    public static final List<String> BUNDLED = List.of("sans", "sans-bold", "serif", "serif-italic", "mono", "wide");
}
