package bandwright.rules.designs;

import bandwright.rules.units.Length;
import bandwright.rules.units.Rgb;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A text that a design takes: a row of texts.csv. The box is in percent of its anchor, its corner the upper left one.
 *
 * @param side empty = on both pictures
 * @param maxSize on the blank
 * @param language of the text, whose case rules hold; the root one = none given
 * @param maxChars empty = any number
 */
public record TextField(
        String design,
        String field,
        Optional<Side> side,
        Anchor anchor,
        double x,
        double y,
        double width,
        double height,
        int lines,
        String font,
        Length maxSize,
        Length minSize,
        Rgb colour,
        Align align,
        Optional<LetterCase> letterCase,
        Locale language,
        OptionalInt maxChars,
        boolean required,
        String defaultText,
        String note) {}
