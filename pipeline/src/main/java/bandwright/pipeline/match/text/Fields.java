package bandwright.pipeline.match.text;

import bandwright.rules.designs.TextField;
import bandwright.rules.designs.Texts;
import bandwright.rules.table.Names;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** The texts that a design takes, each once, however many boxes it fills. */
record Fields(String design, Map<String, Field> byName) {
    static final Fields NONE = new Fields("", Map.of());

    /**
     * One of them.
     *
     * @param maxChars the smallest of its boxes; empty = any number
     */
    record Field(String name, OptionalInt maxChars, boolean isRequired, String defaultText) {
        private Field and(Field other) {
            OptionalInt least = Stream.of(maxChars, other.maxChars)
                    .flatMapToInt(OptionalInt::stream)
                    .min();
            String text = defaultText.isEmpty() ? other.defaultText : defaultText;
            return new Field(name, least, isRequired || other.isRequired, text);
        }
    }

    static Fields of(String design, Texts texts) {
        Map<String, Field> byName = new LinkedHashMap<>();
        for (TextField text : texts.of(design)) {
            Field field = new Field(text.field(), text.maxChars(), text.required(), text.defaultText());
            byName.merge(Names.fold(text.field()), field, Field::and);
        }
        return new Fields(design, byName);
    }

    Optional<Field> find(String name) {
        return Optional.ofNullable(byName.get(Names.fold(name)));
    }

    List<Field> list() {
        return List.copyOf(byName.values());
    }
}
