package bandwright.pipeline.write.pdf;

import bandwright.rules.units.Length;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;

/** The letters of one file: every glyph is stored once, as a form, and drawn wherever a line needs it. */
public final class Lettering {
    private final PDDocument document;
    private final Map<String, PDFormXObject> glyphs = new HashMap<>();

    public Lettering(PDDocument document) {
        this.document = document;
    }

    /** Sets a line whose baseline begins at (x, y). */
    public void set(Canvas canvas, Line line, Length x, Length y) {
        OutlineFont font = line.font();
        canvas.save().unitsAt(font.unitsPerEm(), line.size(), x, y);
        int step = 0;
        for (int codePoint : line.text().codePoints().toArray()) {
            OutlineFont.Letter letter = font.letter(codePoint);
            if (!letter.outline().isEmpty()) {
                if (step != 0) {
                    canvas.stepRight(step);
                }
                step = 0;
                String name = font.mark() + letter.id();
                canvas.draw(name, glyphs.computeIfAbsent(name, n -> glyph(font, letter)));
            }
            step += letter.advance();
        }
        canvas.restore();
    }

    private PDFormXObject glyph(OutlineFont font, OutlineFont.Letter letter) {
        int em = font.unitsPerEm();
        // Generous, so that no accent or overhang is cut off.
        PDRectangle box = new PDRectangle(-em, -em, 4f * em, 3f * em);
        return new Canvas().operators(letter.outline()).form(document, box);
    }
}
