package bandwright.pipeline.match;

import bandwright.rules.table.Names;
import bandwright.rules.words.Words;
import java.util.Optional;

/** Names from strangers inside a sentence of ours: on one line, and no longer than a person reads. */
final class Quoted {
    private static final int LONGEST = 60;

    private Quoted() {}

    /** The name with white space and control characters as single spaces; a long one is cut, with three dots. */
    static String of(String name) {
        StringBuilder out = new StringBuilder();
        name.codePoints()
                .map(c -> Character.isISOControl(c) || isLayout(c) ? ' ' : c)
                .limit(LONGEST * 4L)
                .forEach(out::appendCodePoint);
        String line = out.toString().strip().replaceAll(" {2,}", " ");
        if (line.codePointCount(0, line.length()) <= LONGEST) {
            return line;
        }
        return line.substring(0, line.offsetByCodePoints(0, LONGEST)).strip() + "...";
    }

    static boolean isNothing(String name) {
        return Names.fold(name).isEmpty();
    }

    /** "Did you mean ...?", or the general cure where nothing is near. */
    static String cure(Optional<String> nearest, String otherwise) {
        return nearest.map(name -> Words.say("match.did-you-mean", of(name))).orElseGet(() -> Words.say(otherwise));
    }

    /** Line and paragraph separators, and marks that turn the direction of writing and would scramble the sentence. */
    private static boolean isLayout(int c) {
        int type = Character.getType(c);
        return type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR
                || type == Character.FORMAT
                || type == Character.SURROGATE;
    }
}
