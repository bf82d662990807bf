package bandwright.pipeline.write.list;

import bandwright.pipeline.write.pdf.Points;
import bandwright.rules.units.Length;

/**
 * How words on a list look. Weight and size carry the meaning, never colour: a list is read in black and white, at
 * arm's length.
 *
 * @param darkness 0 white to 1 black
 */
public record Style(boolean isBold, Length size, double darkness) {
    /** The one scale of sizes that all lists share. */
    public static final Style TITLE = bold(20);

    public static final Style HEADING = bold(13);
    public static final Style FIGURE = bold(15);
    public static final Style STRONG = bold(10);
    public static final Style ADDRESS = plain(12);
    public static final Style BODY = plain(10);
    public static final Style SMALL = plain(8);
    public static final Style LABEL = new Style(true, Points.length(7.5), 0.65);

    private static Style bold(double points) {
        return new Style(true, Points.length(points), 1);
    }

    private static Style plain(double points) {
        return new Style(false, Points.length(points), 1);
    }

    /** From one baseline to the next. */
    public Length leading() {
        return size.times(1.3);
    }

    public Style bold() {
        return new Style(true, size, darkness);
    }

    public Style grey() {
        return new Style(isBold, size, 0.65);
    }
}
