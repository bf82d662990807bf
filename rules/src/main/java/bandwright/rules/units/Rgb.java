package bandwright.rules.units;

/** An sRGB colour (IEC 61966-2-1), 0 to 255 a channel. */
public record Rgb(int red, int green, int blue) {
    public static final Rgb WHITE = new Rgb(255, 255, 255);

    public Rgb {
        if ((red | green | blue) < 0 || red > 255 || green > 255 || blue > 255) {
            throw new IllegalArgumentException("not a colour: " + red + ", " + green + ", " + blue);
        }
    }

    /** The six-digit form with its hash, in capitals: #FFFFFF. */
    public String hex() {
        return "#"
                + Integer.toHexString(0x1000000 | red << 16 | green << 8 | blue)
                        .substring(1)
                        .toUpperCase(java.util.Locale.ROOT);
    }
}
