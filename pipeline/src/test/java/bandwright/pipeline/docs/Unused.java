package bandwright.pipeline.docs;

import bandwright.rules.Shop;
import java.util.Arrays;

/** Columns and keys that are read and checked, and that nothing asks for. A test fails as soon as something does. */
enum Unused {
    PEOPLE("key.people", Shop.class, "people");

    final String words;
    final Class<?> owner;
    final String accessor;

    Unused(String words, Class<?> owner, String accessor) {
        this.words = words;
        this.owner = owner;
        this.accessor = accessor;
    }

    static boolean has(String words) {
        return Arrays.stream(values()).anyMatch(one -> one.words.equals(words));
    }
}
