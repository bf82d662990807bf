package bandwright.pipeline.type;

import bandwright.pipeline.held.Outcome;
import bandwright.rules.designs.Align;
import bandwright.rules.designs.FontFile;
import bandwright.rules.designs.TextField;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.awt.Font;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Sets a text as large as its box allows, by its ink and not by its font's box: "Ada" in a box of 60 x 20 mm is 20 mm
 * high from the foot of its letters to the top of its A. Of one line and two the arrangement with the larger type is
 * taken.
 */
public final class TypeSetting {
    /** From baseline to baseline over the type size. [J] */
    private static final double LEADING = 1.2;

    /** More is no name and no verse; it would only cost time. [J] */
    private static final int MOST_WORDS = 200;

    private static final int MOST_CHARACTERS = 2000;

    private final TypeCase fonts;
    private final Map<Font, Double> strokes = new HashMap<>();

    public TypeSetting(List<FontFile> own) {
        this.fonts = new TypeCase(own);
    }

    /** Sets a text; a text without ink is made of nothing. */
    public Outcome<Optional<SetText>> set(TextField field, String text, Box box) {
        try {
            String typed = cased(field, text);
            Shaping shaping = new Shaping(fonts.chain(field.font()));
            return set(field, typed, shaping, box)
                    .then(made -> Outcome.made(made.map(set -> measured(set, shaping.fonts(typed)))));
        } catch (TypeCase.UnreadableFont e) {
            return Outcome.held(new TypeReason.FontUnreadable(e.id()));
        }
    }

    /** With the strokes of the font that has the thinnest. */
    private SetText measured(SetText set, Set<Font> used) {
        double share = used.stream()
                .mapToDouble(font -> strokes.computeIfAbsent(font, Strokes::share))
                .min()
                .orElse(1);
        return new SetText(set.outline(), set.ink(), set.size(), set.size().times(share));
    }

    private static Outcome<Optional<SetText>> set(TextField field, String text, Shaping shaping, Box box) {
        OptionalInt missing = shaping.missing(text);
        if (missing.isPresent()) {
            return Outcome.held(new TypeReason.GlyphMissing(text, missing.getAsInt()));
        }
        if (text.isBlank()) {
            return Outcome.made(Optional.empty());
        }
        List<String> words = List.of(text.strip().split("\\s+", -1));
        boolean isEndless = words.size() > MOST_WORDS || text.length() > MOST_CHARACTERS;
        Optional<SetText> largest = isEndless ? Optional.empty() : largest(words, field, shaping, box);
        boolean isTooLong = isEndless
                || largest.filter(set -> field.minSize().longerThan(set.size())).isPresent();
        return isTooLong
                ? Outcome.held(new TypeReason.TextTooLong(field.field(), text, points(field.minSize())))
                : Outcome.made(largest);
    }

    /** Of all numbers of lines the one that allows the largest type; of equals the fewest. */
    private static Optional<SetText> largest(List<String> words, TextField field, Shaping shaping, Box box) {
        double[] widths = words.stream()
                .mapToDouble(word -> Shaping.ink(shaping.line(word)).getWidth())
                .toArray();
        Optional<SetText> best = Optional.empty();
        for (int count = 1; count <= Math.min(field.lines(), words.size()); count++) {
            List<String> lines = Lines.balanced(words, widths, TypeCase.EM / 4, count);
            Optional<SetText> set = placed(block(lines, shaping, field.align()), field, box);
            boolean isLarger = set.isPresent()
                    && (best.isEmpty() || set.get().size().longerThan(best.get().size()));
            best = isLarger ? set : best;
        }
        return best;
    }

    /** A type size, as texts.csv has it. */
    private static String points(Length size) {
        BigDecimal points = BigDecimal.valueOf(size.inches() * 72).setScale(1, RoundingMode.HALF_UP);
        return points.stripTrailingZeros().toPlainString();
    }

    private static String cased(TextField field, String text) {
        String composed = Normalizer.normalize(text, Normalizer.Form.NFC);
        if (field.letterCase().isEmpty()) {
            return composed;
        }
        return switch (field.letterCase().get()) {
            case UPPER -> composed.toUpperCase(Locale.ROOT);
            case LOWER -> composed.toLowerCase(Locale.ROOT);
            case TITLE -> titled(composed);
        };
    }

    /** The first letter of each word in title case, the others small: 'O'HARA' is O'hara. */
    private static String titled(String text) {
        StringBuilder out = new StringBuilder();
        boolean isFirst = true;
        for (int c : text.codePoints().toArray()) {
            boolean isLetter = Character.isLetter(c);
            if (isLetter && isFirst) {
                out.appendCodePoint(Character.toTitleCase(c));
            } else {
                out.append(Character.toString(c).toLowerCase(Locale.ROOT));
            }
            isFirst = Character.isWhitespace(c) || c == '-' || (isFirst && !isLetter);
        }
        return out.toString();
    }

    /** The lines one under the other, aligned by their ink. */
    private static Shape block(List<String> lines, Shaping shaping, Align align) {
        Path2D block = new Path2D.Double(Path2D.WIND_NON_ZERO);
        for (int i = 0; i < lines.size(); i++) {
            Shape line = shaping.line(lines.get(i));
            Rectangle2D ink = Shaping.ink(line);
            double x =
                    switch (align) {
                        case LEFT -> -ink.getMinX();
                        case CENTRE -> -ink.getCenterX();
                        case RIGHT -> -ink.getMaxX();
                    };
            AffineTransform place = AffineTransform.getTranslateInstance(x, i * LEADING * TypeCase.EM);
            block.append(line.getPathIterator(place), false);
        }
        return block;
    }

    private static Optional<SetText> placed(Shape block, TextField field, Box box) {
        Rectangle2D ink = Shaping.ink(block);
        if (ink.getWidth() <= 0 || ink.getHeight() <= 0) {
            return Optional.empty();
        }
        double fits = Math.min(box.width().mm() / ink.getWidth(), box.height().mm() / ink.getHeight());
        double scale = Math.min(fits, field.maxSize().mm() / TypeCase.EM);
        double wide = ink.getWidth() * scale;
        double high = ink.getHeight() * scale;
        double slack = box.width().mm() - wide;
        double x = box.x().mm()
                + switch (field.align()) {
                    case LEFT -> 0;
                    case CENTRE -> slack / 2;
                    case RIGHT -> slack;
                };
        double y = box.y().mm() + (box.height().mm() - high) / 2;
        // Letters are shaped downwards, the blank is measured upwards.
        AffineTransform map =
                new AffineTransform(scale, 0, 0, -scale, x - ink.getMinX() * scale, y + ink.getMaxY() * scale);
        Box inked = new Box(Length.mm(x), Length.mm(y), Length.mm(wide), Length.mm(high));
        Length size = Length.mm(scale * TypeCase.EM);
        return Optional.of(new SetText(Outline.of(block, map), inked, size, size));
    }
}
