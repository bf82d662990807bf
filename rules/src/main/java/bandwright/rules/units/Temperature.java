package bandwright.rules.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** A press temperature, kept in degrees Celsius; a shop may write and read Fahrenheit. */
public record Temperature(double celsius) implements Comparable<Temperature> {
    private static final double ABSOLUTE_ZERO = -273.15;

    public Temperature {
        if (!(celsius >= ABSOLUTE_ZERO && celsius < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("not a temperature: " + celsius + " C");
        }
    }

    public static Temperature celsius(double degrees) {
        return new Temperature(degrees);
    }

    public static Temperature fahrenheit(double degrees) {
        return new Temperature((degrees - 32) / 1.8);
    }

    public double fahrenheit() {
        return celsius * 1.8 + 32;
    }

    /** Degrees Celsius with one decimal, half up, as run.json has them. */
    public BigDecimal celsius1() {
        return BigDecimal.valueOf(celsius).setScale(1, RoundingMode.HALF_UP);
    }

    /** Whole degrees Fahrenheit, half up. */
    public int wholeFahrenheit() {
        return (int) Math.round(fahrenheit());
    }

    /** Whole degrees Celsius, half up. */
    public int wholeCelsius() {
        return (int) Math.round(celsius);
    }

    @Override
    public int compareTo(Temperature other) {
        return Double.compare(celsius, other.celsius);
    }
}
