package bandwright.pipeline.write.list;

import bandwright.pipeline.write.pdf.Canvas;
import bandwright.pipeline.write.pdf.EmbeddedFont;
import bandwright.rules.units.Length;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The embedded fonts of one list: its words can be searched and copied. What the first font lacks, the wide one sets. */
public final class Faces {
    private static final int REMEMBERED = 500;

    private final EmbeddedFont plain;
    private final EmbeddedFont bold;
    private final EmbeddedFont wide;
    private final Map<Wrapped, List<String>> wrapped = new HashMap<>();

    private record Wrapped(Text text, Length width) {}

    /** The fonts of one document. */
    public Faces(PDDocument document) {
        plain = EmbeddedFont.plain(document);
        bold = EmbeddedFont.bold(document);
        wide = EmbeddedFont.wide(document);
    }

    /** How wide one line is. */
    public Length width(String text, Style style) {
        Length width = Length.ZERO;
        for (Run run : runs(text, style)) {
            width = width.plus(style.size().times(run.font.widthShare(run.text)));
        }
        return width;
    }

    /** Sets one line whose baseline begins at (x, y). */
    public void set(Canvas canvas, String text, Style style, Length x, Length y) {
        canvas.black(style.darkness());
        Length at = x;
        for (Run run : runs(text, style)) {
            canvas.text(run.font, run.text, style.size(), at, y);
            at = at.plus(style.size().times(run.font.widthShare(run.text)));
        }
    }

    /** Embeds what was set; after the last line. */
    public void finish() throws IOException {
        plain.finish();
        bold.finish();
        wide.finish();
    }

    /** A stretch of a line in one font. */
    private record Run(EmbeddedFont font, String text) {}

    /** The lines of a text at a width; what was asked for of late is remembered, as it is measured before it is drawn. */
    public List<String> lines(Text text, Length width) {
        if (wrapped.size() > REMEMBERED) {
            wrapped.clear();
        }
        return wrapped.computeIfAbsent(new Wrapped(text, width), key -> text.wrapped(this, width));
    }

    private List<Run> runs(String text, Style style) {
        EmbeddedFont first = style.isBold() ? bold : plain;
        List<Run> runs = new ArrayList<>();
        int from = 0;
        EmbeddedFont font = first;
        for (int i = 0; i < text.length(); ) {
            int codePoint = text.codePointAt(i);
            EmbeddedFont next = first.has(codePoint) || !wide.has(codePoint) ? first : wide;
            if (next != font) {
                if (i > from) {
                    runs.add(new Run(font, text.substring(from, i)));
                }
                from = i;
                font = next;
            }
            i += Character.charCount(codePoint);
        }
        if (from < text.length()) {
            runs.add(new Run(font, text.substring(from)));
        }
        return runs;
    }
}
