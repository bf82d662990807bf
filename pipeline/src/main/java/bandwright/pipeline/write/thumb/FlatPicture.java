package bandwright.pipeline.write.thumb;

import bandwright.pipeline.pixels.Sights;
import bandwright.pipeline.size.Transfer;
import bandwright.rules.units.Rgb;

/** All that is printed of a transfer, flat and upright as on the blank, on a base, at so many pixels a millimetre. */
public final class FlatPicture {
    private final int width;
    private final int height;
    private final double perMm;
    private final int[] rgb;

    private FlatPicture(int width, int height, double perMm, int[] rgb) {
        this.width = width;
        this.height = height;
        this.perMm = perMm;
        this.rgb = rgb;
    }

    /** Draws it; a picture that can't be decoded is a grey tile. */
    public static FlatPicture of(Transfer transfer, Rgb base, double perMm, Sights sights) {
        Canvas canvas = TransferDrawing.canvas(
                transfer,
                perMm,
                layer -> SmallPicture.readAs(
                        sights,
                        layer.artwork(),
                        layer.place().width().mm() * perMm,
                        layer.place().height().mm() * perMm));
        canvas.standOn(base);
        return new FlatPicture(canvas.width(), canvas.height(), perMm, canvas.rgb());
    }

    /** The colour so many millimetres from the left and from the top; beyond an edge the edge's own. */
    public int at(double fromLeft, double fromTop) {
        int x = (int) Math.max(0, Math.min(width - 1, fromLeft * perMm));
        int y = (int) Math.max(0, Math.min(height - 1, fromTop * perMm));
        return rgb[y * width + x];
    }
}
