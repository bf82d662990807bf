package bandwright.pipeline.match.text;

import bandwright.pipeline.held.Question;
import bandwright.pipeline.held.Reason;
import bandwright.rules.orders.OrderField;
import bandwright.rules.table.Quoted;
import bandwright.rules.words.Words;
import java.util.List;
import java.util.Optional;

/** Every way in which a row's texts can be unfit; only the buyer knows the cure. */
public sealed interface TextReason extends Reason {
    /** The buyer's own words, as they came. */
    String words();

    /** What is asked of the buyer. */
    String needed();

    @Override
    default Optional<Question> question() {
        return Optional.of(new Question(words(), needed()));
    }

    /**
     * Something was asked that the design has no place for.
     *
     * @param left what is not understood
     * @param takes the texts that the design takes
     */
    record PersonalisationUnread(OrderField field, String left, String design, List<String> takes, String words)
            implements TextReason {
        public PersonalisationUnread {
            takes = List.copyOf(takes);
        }

        @Override
        public String code() {
            return "personalisation-unread";
        }

        @Override
        public String message() {
            String shown = Quoted.text(left);
            return takes.isEmpty()
                    ? Words.say("held.personalisation-unread.none.message", shown, Quoted.text(design))
                    : Words.say("held.personalisation-unread.message", shown, Quoted.text(design), listed());
        }

        @Override
        public String cure() {
            return takes.isEmpty()
                    ? Words.say("held.personalisation-unread.none.cure")
                    : Words.say("held.personalisation-unread.cure", takes.get(0));
        }

        @Override
        public String needed() {
            return takes.isEmpty()
                    ? Words.say("held.personalisation-unread.none.ask")
                    : Words.say("held.personalisation-unread.ask", listed());
        }

        private String listed() {
            return String.join(", ", takes);
        }
    }

    /** Neither one text for all pieces nor one for each. */
    record TextsNotDealt(OrderField field, String name, int texts, int pieces, String words) implements TextReason {
        @Override
        public String code() {
            return "texts-not-dealt";
        }

        @Override
        public String message() {
            return Words.say("held.texts-not-dealt.message", name, texts, pieces);
        }

        @Override
        public String cure() {
            return Words.say("held.texts-not-dealt.cure", name, pieces);
        }

        @Override
        public String needed() {
            return Words.say("held.texts-not-dealt.ask", name, pieces);
        }
    }

    /** A text that the design can't do without. */
    record TextMissing(OrderField field, String name, String design, String words) implements TextReason {
        @Override
        public String code() {
            return "text-missing";
        }

        @Override
        public String message() {
            return Words.say("held.text-missing.message", Quoted.text(design), name);
        }

        @Override
        public String cure() {
            return Words.say("held.text-missing.cure", name);
        }

        @Override
        public String needed() {
            return Words.say("held.text-missing.ask", name);
        }
    }

    /** More characters than the field takes. */
    record TextTooLong(OrderField field, String name, String text, int length, int most, String words)
            implements TextReason {
        @Override
        public String code() {
            return "text-too-long";
        }

        @Override
        public String message() {
            return Words.say("held.text-too-long.message", Quoted.text(text), length, name, most);
        }

        @Override
        public String cure() {
            return Words.say("held.text-too-long.cure", most);
        }

        @Override
        public String needed() {
            return Words.say("held.text-too-long.ask", Quoted.text(text), length, name, most);
        }
    }
}
