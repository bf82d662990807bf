package bandwright.pipeline.type;

/** Why a text can't be set. */
public sealed interface TypeFault {
    /** It doesn't fit its box at the smallest size. */
    record TooLong() implements TypeFault {}

    /** No font has a character. */
    record NoGlyph(int codePoint) implements TypeFault {}

    /** The field's font is a file that is no font. */
    record NoFont(String id) implements TypeFault {}
}
