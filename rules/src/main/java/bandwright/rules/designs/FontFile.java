package bandwright.rules.designs;

/** A font of the shop's own: a row of fonts.csv. The file lies beside the tables. */
public record FontFile(String id, String file, String note) {}
