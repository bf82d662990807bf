package bandwright.pipeline.write.list;

import bandwright.rules.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Words that wrap at the width they are given; a word that is wider than a line is parted where the line ends. */
public record Text(String words, Style style, Align align) implements Block {
    public Text {
        words = words.codePoints()
                .filter(Text::isSettable)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    /**
     * Control characters, marks that turn the direction of writing and variation selectors have no shape of their own:
     * set, they would show as a question mark or scramble the line.
     */
    private static boolean isSettable(int codePoint) {
        boolean isControl = Character.isISOControl(codePoint) && SPACES.indexOf(codePoint) < 0;
        boolean isSelector = codePoint >= 0xFE00 && codePoint <= 0xFE0F;
        return !isControl && !isSelector && Character.getType(codePoint) != Character.FORMAT;
    }

    /** The control characters that are white space: lines and words are parted there. */
    private static final String SPACES = "\t\n\u000B\f\r\u0085";

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

    /** These words on one line: what does not fit is cut, with three dots. */
    public Text onOneLine(Faces faces, Length width) {
        String line = words.strip().replaceAll("\\s+", " ");
        if (!faces.width(line, style).longerThan(width)) {
            return new Text(line, style, align);
        }
        String dots = "...";
        int end = fitting(line, faces, width.minus(faces.width(dots, style)));
        return new Text(line.substring(0, end).stripTrailing() + dots, style, align);
    }

    private List<String> lines(Faces faces, Length width) {
        return faces.lines(this, width);
    }

    /** The lines, measured anew. */
    List<String> wrapped(Faces faces, Length width) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : words.split("\\R", -1)) {
            wrap(paragraph.strip(), faces, width, lines);
        }
        return List.copyOf(lines);
    }

    /** Each word is measured once: a stranger's cell may hold 32,767 characters. */
    private void wrap(String paragraph, Faces faces, Length width, List<String> lines) {
        Length space = faces.width(" ", style);
        StringBuilder line = new StringBuilder();
        Length used = Length.ZERO;
        for (String word : paragraph.split("\\s+", -1)) {
            Length more = faces.width(word, style);
            if (!line.isEmpty() && !used.plus(space).plus(more).longerThan(width)) {
                line.append(' ').append(word);
                used = used.plus(space).plus(more);
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line.toString());
                line.setLength(0);
            }
            String rest = more.longerThan(width) ? parted(word, faces, width, lines) : word;
            line.append(rest);
            used = rest.length() == word.length() ? more : faces.width(rest, style);
        }
        lines.add(line.toString());
    }

    /** Adds whole lines of a word that is wider than one, and gives what is left of it. */
    private String parted(String word, Faces faces, Length width, List<String> lines) {
        String rest = word;
        for (int fits = fitting(rest, faces, width); fits < rest.length(); fits = fitting(rest, faces, width)) {
            lines.add(rest.substring(0, fits));
            rest = rest.substring(fits);
        }
        return rest;
    }

    /** How many chars of a long word fit the line; at least one character. */
    private int fitting(String word, Faces faces, Length width) {
        int end = 0;
        Length used = Length.ZERO;
        while (end < word.length()) {
            int next = word.offsetByCodePoints(end, 1);
            used = used.plus(faces.width(word.substring(end, next), style));
            if (end > 0 && used.longerThan(width)) {
                return end;
            }
            end = next;
        }
        return end;
    }
}
