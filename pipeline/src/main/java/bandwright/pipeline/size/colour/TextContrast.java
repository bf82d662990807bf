package bandwright.pipeline.size.colour;

import bandwright.pipeline.size.Layer;
import bandwright.rules.colour.Contrast;
import bandwright.rules.colour.LinearLight;
import bandwright.rules.units.Box;
import bandwright.rules.units.Rgb;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How well set letters stand out from what is printed round them, both as forecast on the blank. A name in white on a dark
 * sea stands out by 12 to 1; where half of it lies on the foam, by 1.4.
 *
 * <p>The box of the letters' ink is parted into cells about a quarter of its height; within one the eye blends what is
 * printed, so its light is the mean. A third of the cells stand out less than the ratio that counts, two thirds as much or
 * more: letters that drown in half of their box are seen to drown, and a bright speck does no harm. [J]
 *
 * @param ratio by WCAG 2.x, 1 to 21
 * @param ground the forecast colour of the third that stands out least
 * @param isBare whether most of that third is the blank itself, without ink
 * @param best what letters would do better there
 */
public record TextContrast(double ratio, Rgb ground, boolean isBare, Better best) {
    /** In which direction letters would stand out more, and by how much at most. */
    public record Better(boolean isDarker, double ratio) {}

    private static final int CELLS_UP = 4;
    private static final int MOST_CELLS_ACROSS = 96;

    /** Looks at a cell, each way. */
    private static final int LOOKS = 3;

    private static final int NO_INK = 0xFF_FFFFFF;

    /** Linear light as forecast, and the share of it that is bare. */
    private record Cell(double red, double green, double blue, double bare) {
        double luminance() {
            return Contrast.luminance(red, green, blue);
        }
    }

    /** Empty if nothing of the letters is printed. */
    public static Optional<TextContrast> of(Layer.Type type, Print print, Rgb base) {
        Box ink = type.ink().shared(type.clip());
        if (!ink.width().isPositive() || !ink.height().isPositive()) {
            return Optional.empty();
        }
        List<Cell> cells = cells(ink, print, base);
        double letters = luminance(type.colour(), base);
        cells.sort(Comparator.comparingDouble(cell -> Contrast.ratio(cell.luminance(), letters)));
        List<Cell> worst = cells.subList(0, third(cells) + 1);
        double ratio = Contrast.ratio(cells.get(third(cells)).luminance(), letters);
        return Optional.of(new TextContrast(ratio, mean(worst), isBare(worst), better(cells, base)));
    }

    private static int third(List<Cell> cells) {
        return cells.size() / 3;
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
        for (int i = 0; i < LOOKS * LOOKS; i++) {
            int printed = print.at(left + (i % LOOKS + 0.5) * wide, low + (i / LOOKS + 0.5) * high);
            red += LinearLight.of(printed >> 16 & 255);
            green += LinearLight.of(printed >> 8 & 255);
            blue += LinearLight.of(printed & 255);
            bare += printed == NO_INK ? 1 : 0;
        }
        double looks = LOOKS * LOOKS;
        return new Cell(
                red / looks * LinearLight.of(base.red()),
                green / looks * LinearLight.of(base.green()),
                blue / looks * LinearLight.of(base.blue()),
                bare / looks);
    }

    private static Rgb mean(List<Cell> cells) {
        return new Rgb(
                LinearLight.channel(
                        cells.stream().mapToDouble(Cell::red).average().orElseThrow()),
                LinearLight.channel(
                        cells.stream().mapToDouble(Cell::green).average().orElseThrow()),
                LinearLight.channel(
                        cells.stream().mapToDouble(Cell::blue).average().orElseThrow()));
    }

    private static boolean isBare(List<Cell> cells) {
        return cells.stream().mapToDouble(Cell::bare).average().orElseThrow() > 0.5;
    }

    /** Black is the darkest ink; the lightest is none, which shows the base. */
    private static Better better(List<Cell> cells, Rgb base) {
        double dark = reached(cells, 0);
        double light = reached(cells, luminance(Rgb.WHITE, base));
        return new Better(dark >= light, Math.max(dark, light));
    }

    private static double reached(List<Cell> cells, double letters) {
        double[] ratios = cells.stream()
                .mapToDouble(cell -> Contrast.ratio(cell.luminance(), letters))
                .sorted()
                .toArray();
        return ratios[third(cells)];
    }
}
