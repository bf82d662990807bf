package bandwright.pipeline.write.list;

import bandwright.rules.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Words that wrap at the width they are given; a word that is wider than a line is parted where the line ends. */
public record Text(String words, Style style, Align align) implements Block {
    /** Where the lines stand in their width. */
    enum Align {
        LEFT,
        RIGHT,
        CENTRE
    }

    public static Text of(String words, Style style) {
        return new Text(words, style, Align.LEFT);
    }

    public static Text right(String words, Style style) {
        return new Text(words, style, Align.RIGHT);
    }

    @Override
    public Length height(Faces faces, Length width) {
        return style.leading().times(lines(faces, width).size());
    }

    @Override
    public void draw(Pen pen, Length x, Length top, Length width) {
        Length y = top.minus(firstBaseline(pen.faces(), width));
        for (String line : lines(pen.faces(), width)) {
            Length slack = width.minus(pen.faces().width(line, style));
            Length from =
                    switch (align) {
                        case LEFT -> x;
                        case RIGHT -> x.plus(slack);
                        case CENTRE -> x.plus(slack.half());
                    };
            pen.faces().set(pen.canvas(), line, style, from, y);
            y = y.minus(style.leading());
        }
    }

    /** The line's slack is parted above and below its letters. */
    @Override
    public Length firstBaseline(Faces faces, Length width) {
        return style.size().times(1.02);
    }

    @Override
    public List<Block> parts(Faces faces, Length width) {
        return lines(faces, width).stream()
                .<Block>map(line -> new Text(line, style, align))
                .toList();
    }

    private List<String> lines(Faces faces, Length width) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : words.split("\\R", -1)) {
            wrap(paragraph.strip(), faces, width, lines);
        }
        return lines;
    }

    private void wrap(String paragraph, Faces faces, Length width, List<String> lines) {
        String line = "";
        for (String word : paragraph.split("\\s+", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!faces.width(longer, style).longerThan(width)) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (faces.width(line, style).longerThan(width) && line.codePointCount(0, line.length()) > 1) {
                int fits = fitting(line, faces, width);
                lines.add(line.substring(0, fits));
                line = line.substring(fits);
            }
        }
        lines.add(line);
    }

    /** How many chars of a long word fit the line; at least one character. */
    private int fitting(String word, Faces faces, Length width) {
        int end = word.offsetByCodePoints(0, 1);
        while (end < word.length()) {
            int next = word.offsetByCodePoints(end, 1);
            if (faces.width(word.substring(0, next), style).longerThan(width)) {
                return end;
            }
            end = next;
        }
        return end;
    }
}
