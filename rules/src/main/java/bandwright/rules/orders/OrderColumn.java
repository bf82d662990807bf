package bandwright.rules.orders;

/** One header that a field goes by: a row of order-columns.csv. An empty site means every site. */
public record OrderColumn(String site, OrderField field, String header) {}
