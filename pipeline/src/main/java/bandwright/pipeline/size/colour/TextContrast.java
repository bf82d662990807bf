package bandwright.pipeline.size.colour;

import bandwright.pipeline.size.Layer;
import bandwright.rules.colour.Contrast;
import bandwright.rules.colour.LinearLight;
import bandwright.rules.units.Box;
import bandwright.rules.units.Rgb;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * How well set letters stand out from what is printed round them, both as forecast on the blank. A name in white on a dark
 * sea stands out by 12 to 1; where half of it lies on the foam, by 1.4.
 *
 * <p>The box of the letters' ink is parted into cells about a quarter of its height; within one the eye blends what is
 * printed, so its light is the mean. A third of the cells stand out less than the ratio that counts, two thirds as much or
 * more: letters that drown in half of their box are seen to drown, and a bright speck does no harm. [J]
 */
public final class TextContrast {
    private static final int CELLS_UP = 4;
    private static final int MOST_CELLS_ACROSS = 96;

    /** Looks at a cell, each way. */
    private static final int LOOKS = 3;

    private final List<Cell> cells;
    private final Rgb base;
    private final double letters;
    private final double ratio;

    private TextContrast(List<Cell> cells, Rgb base, double letters) {
        this.cells = List.copyOf(cells);
        this.base = base;
        this.letters = letters;
        this.ratio = reached(letters);
    }

    /**
     * Linear light as forecast.
     *
     * @param bare the share of it that is the blank itself, without ink
     */
    private record Cell(double red, double green, double blue, double luminance, double bare) {
        Cell(double red, double green, double blue, double bare) {
            this(red, green, blue, Contrast.luminance(red, green, blue), bare);
        }
    }

    /** Empty if nothing of the letters is printed. */
    public static Optional<TextContrast> of(Layer.Type type, Print print, Rgb base) {
        Box ink = type.ink().shared(type.clip());
        if (!ink.width().isPositive() || !ink.height().isPositive()) {
            return Optional.empty();
        }
        return Optional.of(new TextContrast(cells(ink, print, base), base, luminance(type.colour(), base)));
    }

    /** By WCAG 2.x, 1 to 21. */
    public double ratio() {
        return ratio;
    }

    /** The forecast colour of the third that stands out least. */
    public Rgb ground() {
        return new Rgb(
                LinearLight.channel(least(Cell::red)),
                LinearLight.channel(least(Cell::green)),
                LinearLight.channel(least(Cell::blue)));
    }

    /** Whether most of that third is the blank itself, without ink. */
    public boolean isBare() {
        return least(Cell::bare) > 0.5;
    }

    /** What letters of black ink would reach, which is the darkest. */
    public double ratioOfBlack() {
        return reached(0);
    }

    /** What letters of no ink would reach, which show the base: nothing is lighter. */
    public double ratioOfNoInk() {
        return reached(luminance(Rgb.WHITE, base));
    }

    private double least(ToDoubleFunction<Cell> of) {
        return cells.stream()
                .filter(cell -> Contrast.ratio(cell.luminance, letters) <= ratio)
                .mapToDouble(of)
                .average()
                .orElseThrow();
    }

    private double reached(double luminance) {
        double[] ratios = new double[cells.size()];
        for (int i = 0; i < ratios.length; i++) {
            ratios[i] = Contrast.ratio(cells.get(i).luminance, luminance);
        }
        Arrays.sort(ratios);
        return ratios[ratios.length / 3];
    }

    private static double luminance(Rgb printed, Rgb base) {
        return Contrast.luminance(
                LinearLight.of(printed.red()) * LinearLight.of(base.red()),
                LinearLight.of(printed.green()) * LinearLight.of(base.green()),
                LinearLight.of(printed.blue()) * LinearLight.of(base.blue()));
    }

    private static List<Cell> cells(Box ink, Print print, Rgb base) {
        double high = ink.height().mm() / CELLS_UP;
        long fits = Math.round(ink.width().mm() / high);
        int across = (int) Math.max(1, Math.min(MOST_CELLS_ACROSS, fits));
        double wide = ink.width().mm() / across;
        List<Cell> cells = new ArrayList<>(across * CELLS_UP);
        for (int row = 0; row < CELLS_UP; row++) {
            for (int column = 0; column < across; column++) {
                double x = ink.x().mm() + column * wide;
                double y = ink.y().mm() + row * high;
                cells.add(cell(print, base, x, y, wide / LOOKS, high / LOOKS));
            }
        }
        return cells;
    }

    private static Cell cell(Print print, Rgb base, double left, double low, double wide, double high) {
        double red = 0;
        double green = 0;
        double blue = 0;
        int bare = 0;
        for (int row = 0; row < LOOKS; row++) {
            for (int column = 0; column < LOOKS; column++) {
                int printed = print.at(left + (column + 0.5) * wide, low + (row + 0.5) * high);
                red += LinearLight.of(printed >> 16 & 255);
                green += LinearLight.of(printed >> 8 & 255);
                blue += LinearLight.of(printed & 255);
                bare += printed == Part.NO_INK ? 1 : 0;
            }
        }
        double looks = LOOKS * LOOKS;
        return new Cell(
                red / looks * LinearLight.of(base.red()),
                green / looks * LinearLight.of(base.green()),
                blue / looks * LinearLight.of(base.blue()),
                bare / looks);
    }
}
