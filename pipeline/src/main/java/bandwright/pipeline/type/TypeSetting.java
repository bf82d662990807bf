package bandwright.pipeline.type;

import bandwright.pipeline.held.Outcome;
import bandwright.pipeline.type.Breaks.Piece;
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
import java.util.HashMap;
import java.util.List;
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
    private static final int MOST_PIECES = 200;

    private static final int MOST_CHARACTERS = 2000;

    private final TypeCase fonts;
    private final Map<Font, Double> strokes = new HashMap<>();

    public TypeSetting(List<FontFile> own) {
        this.fonts = new TypeCase(own);
    }

    /** Sets a text; a text without ink is made of nothing. */
    public Outcome<Optional<SetText>> set(TextField field, String text, Box box) {
        try {
            String typed = LetterCases.set(field.letterCase(), field.language(), text);
            Shaping shaping = new Shaping(fonts.chain(field.font(), typed));
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
        boolean isEndless = text.length() > MOST_CHARACTERS;
        List<Piece> pieces = isEndless ? List.of() : Breaks.pieces(text);
        isEndless |= pieces.size() > MOST_PIECES;
        Optional<SetText> largest = isEndless ? Optional.empty() : largest(pieces, field, shaping, box);
        boolean isTooLong = isEndless
                || largest.filter(set -> field.minSize().longerThan(set.size())).isPresent();
        return isTooLong
                ? Outcome.held(new TypeReason.TextTooLong(field.field(), text, points(field.minSize())))
                : Outcome.made(largest);
    }

    /** Of all numbers of lines the one that allows the largest type; of equals the fewest. */
    private static Optional<SetText> largest(List<Piece> pieces, TextField field, Shaping shaping, Box box) {
        int most = Math.min(field.lines(), pieces.size());
        boolean isRightToLeft = Shaping.isRightToLeft(text(pieces));
        double[] widths = most == 1
                ? new double[pieces.size()]
                : pieces.stream()
                        .mapToDouble(piece -> Shaping.ink(shaping.line(piece.text(), isRightToLeft))
                                .getWidth())
                        .toArray();
        Lines lines = new Lines(pieces, widths, TypeCase.EM / 4);
        Optional<SetText> best = Optional.empty();
        for (int count = 1; count <= most; count++) {
            List<Shape> shapes = lines.balanced(count).stream()
                    .map(line -> shaping.line(line, isRightToLeft))
                    .toList();
            Optional<SetText> set = placed(block(shapes, field.align()), field, box);
            boolean isLarger = set.isPresent()
                    && (best.isEmpty() || set.get().size().longerThan(best.get().size()));
            best = isLarger ? set : best;
        }
        return best;
    }

    private static String text(List<Piece> pieces) {
        return String.join(" ", pieces.stream().map(Piece::text).toList());
    }

    /** A type size, as texts.csv has it. */
    private static String points(Length size) {
        BigDecimal points = BigDecimal.valueOf(size.inches() * 72).setScale(1, RoundingMode.HALF_UP);
        return points.stripTrailingZeros().toPlainString();
    }

    /** The lines one under the other, aligned by their ink. */
    private static Shape block(List<Shape> lines, Align align) {
        Path2D block = new Path2D.Double(Path2D.WIND_NON_ZERO);
        for (int i = 0; i < lines.size(); i++) {
            Shape line = lines.get(i);
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
