package bandwright.pipeline.intake.listing;

/** The words of a row that say what it orders; each may be empty. */
public record Asked(String site, String product, String variation, String sku, String design) {}
