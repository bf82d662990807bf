package bandwright.rules.heat;

/** An electrical circuit of the shop: a row of circuits.csv. */
public record Circuit(String id, double volts, double amperes, String note) {}
