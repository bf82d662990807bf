package bandwright.pipeline.write.pdf;

import bandwright.rules.units.Length;
import io.nayuki.qrcodegen.QrCode;
import io.nayuki.qrcodegen.QrSegment;
import java.util.Optional;

/**
 * A QR code (ISO/IEC 18004), error correction M, drawn as one filled path of whole modules, neighbours merged. Whoever
 * draws it leaves {@link #QUIET} modules white on all sides.
 */
public final class QrMark {
    /** White modules round a code; ISO/IEC 18004, 6.3.8. */
    public static final int QUIET = 4;

    /** Longer texts make modules too small for a flag, whatever its size. [J] */
    private static final int MOST_CHARACTERS = 120;

    /**
     * Every mask of ISO/IEC 18004, 7.8 is read alike, as the code names its own; to weigh all eight for each of 15,000
     * labels was a tenth of a long run's time.
     */
    private static final int MASK = 3;

    private final QrCode code;

    private QrMark(QrCode code) {
        this.code = code;
    }

    /** The code of a text; empty where the text is too long for a code that a phone reads off a flag. */
    public static Optional<QrMark> find(String text) {
        return text.length() > MOST_CHARACTERS
                ? Optional.empty()
                : Optional.of(new QrMark(QrCode.encodeSegments(
                        QrSegment.makeSegments(text), QrCode.Ecc.MEDIUM, 1, QrCode.MAX_VERSION, MASK, true)));
    }

    /** Modules along one side, without the quiet zone. */
    public int modules() {
        return code.size;
    }

    /** Draws the dark modules with their lower-left corner at (x, y). */
    public void draw(Canvas canvas, Length side, Length x, Length y) {
        canvas.save().unitsAt(code.size, side, x, y);
        for (int row = 0; row < code.size; row++) {
            drawRow(canvas, row);
        }
        canvas.fillPath().restore();
    }

    private void drawRow(Canvas canvas, int row) {
        int start = 0;
        for (int column = 0; column <= code.size; column++) {
            // getModule is light outside the code, so the last run ends too.
            if (!code.getModule(column, row)) {
                if (column > start) {
                    canvas.unitRectangle(start, code.size - 1 - row, column - start, 1);
                }
                start = column + 1;
            }
        }
    }
}
