package bandwright.pipeline.docs;

import bandwright.rules.Shop;
import bandwright.rules.blanks.Blank;
import java.util.Arrays;

/** Columns and keys that are read and checked, and that nothing asks for. A test fails as soon as something does. */
enum Unused {
    PEOPLE("key.people", Shop.class, "people"),
    CONTRAST_NOTE("key.contrast_note", Shop.class, "contrastNote"),
    CONTRAST_HOLD("key.contrast_hold", Shop.class, "contrastHold"),
    PROOFS("key.proofs", Shop.class, "proofs"),
    BASE_COLOUR("column.blanks.base_colour", Blank.class, "baseColour"),
    HOT_COLOUR("column.blanks.hot_colour", Blank.class, "hotColour"),
    BACKING("column.blanks.backing", Blank.class, "backing");

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
