package bandwright.pipeline.cli;

import bandwright.rules.words.Words;
import java.util.Collections;
import java.util.Enumeration;
import java.util.ResourceBundle;
import org.jspecify.annotations.Nullable;

/** The one message file, in the shape that the command line library asks help texts of. */
final class WordsBundle extends ResourceBundle {
    @Override
    protected @Nullable Object handleGetObject(String key) {
        return Words.keys().contains(key) ? Words.say(key) : null;
    }

    @Override
    public Enumeration<String> getKeys() {
        return Collections.enumeration(Words.keys());
    }
}
