package bandwright.pipeline.write.sheets;

import bandwright.pipeline.write.pdf.Canvas;
import bandwright.pipeline.write.pdf.Lettering;
import bandwright.pipeline.write.pdf.Line;
import bandwright.pipeline.write.pdf.OutlineFont;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Some lines of type under each other, as wide as the longest. */
record TextBlock(List<Line> lines) {
    private static final double LEADING = 1.3;

    TextBlock {
        lines = List.copyOf(lines);
    }

    /** A bold heading over lines that stand as they are. */
    static TextBlock listed(String heading, List<String> texts, Length size) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(OutlineFont.bold(), heading, size));
        texts.forEach(text -> lines.add(new Line(OutlineFont.regular(), text, size)));
        return new TextBlock(lines);
    }

    /** Running text, broken between words at that width. */
    static TextBlock wrapped(String text, Length size, Length width) {
        List<Line> lines = new ArrayList<>();
        Line line = new Line(OutlineFont.regular(), "", size);
        for (String word : text.split(" ", -1)) {
            Line longer = new Line(line.font(), line.text().isEmpty() ? word : line.text() + " " + word, size);
            if (longer.width().longerThan(width) && !line.text().isEmpty()) {
                lines.add(line);
                longer = new Line(line.font(), word, size);
            }
            line = longer;
        }
        lines.add(line);
        return new TextBlock(lines);
    }

    Length width() {
        return lines.stream().map(Line::width).reduce(Length.ZERO, Length::atLeast);
    }

    Length height() {
        return lines.stream().map(line -> line.size().times(LEADING)).reduce(Length.ZERO, Length::plus);
    }

    /** Sets the block into its box: upright, or turned where the box is as wide as the block is high. */
    void set(Canvas canvas, Lettering lettering, Box box, boolean turned) {
        canvas.save();
        if (turned) {
            canvas.concat(0, 1, -1, 0, box.right(), box.y());
        } else {
            canvas.concat(1, 0, 0, 1, box.x(), box.y());
        }
        Length top = height();
        for (Line line : lines) {
            Length depth = line.size().times(LEADING);
            lettering.set(
                    canvas, line, Length.ZERO, top.minus(depth).plus(line.size().times(0.3)));
            top = top.minus(depth);
        }
        canvas.restore();
    }
}
