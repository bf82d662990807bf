package bandwright.pipeline.type;

import bandwright.pipeline.held.Question;
import bandwright.pipeline.held.Reason;
import bandwright.rules.orders.OrderField;
import bandwright.rules.table.Quoted;
import bandwright.rules.words.Words;
import java.util.Locale;
import java.util.Optional;

/** Every way in which a text can't be set. */
public sealed interface TypeReason extends Reason {
    @Override
    default OrderField field() {
        return OrderField.PERSONALISATION;
    }

    /**
     * It doesn't fit its box at the smallest size.
     *
     * @param name the field's
     * @param points that size
     */
    record TextTooLong(String name, String text, String points) implements TypeReason {
        @Override
        public String code() {
            return "text-too-long";
        }

        @Override
        public String message() {
            return Words.say("held.text-too-long.box", Quoted.text(text), name, points);
        }

        @Override
        public String cure() {
            return Words.say("held.text-too-long.box.cure");
        }

        @Override
        public Optional<Question> question() {
            return Optional.of(new Question(text, Words.say("held.text-too-long.box.ask", name)));
        }
    }

    /** No font has a character of it. */
    record GlyphMissing(String text, int codePoint) implements TypeReason {
        @Override
        public String code() {
            return "glyph-missing";
        }

        @Override
        public String message() {
            String name = Optional.ofNullable(Character.getName(codePoint))
                    .orElse(String.format(Locale.ROOT, "U+%04X", codePoint));
            return Words.say(
                    "held.glyph-missing.message", Quoted.text(Character.toString(codePoint)), name, Quoted.text(text));
        }

        @Override
        public String cure() {
            return Words.say("held.glyph-missing.cure");
        }
    }

    /** The field's font is a file that is no font. */
    record FontUnreadable(String id) implements TypeReason {
        @Override
        public String code() {
            return "font-unreadable";
        }

        @Override
        public OrderField field() {
            return OrderField.DESIGN;
        }

        @Override
        public String message() {
            return Words.say("held.font-unreadable.message", Quoted.text(id));
        }

        @Override
        public String cure() {
            return Words.say("held.font-unreadable.cure");
        }
    }
}
