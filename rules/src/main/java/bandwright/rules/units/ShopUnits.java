package bandwright.rules.units;

/** What a bare number in a cell means in this shop. */
public record ShopUnits(LengthUnit length, TemperatureUnit temperature) {
    public static final ShopUnits BUILT_IN = new ShopUnits(LengthUnit.IN, TemperatureUnit.F);
}
