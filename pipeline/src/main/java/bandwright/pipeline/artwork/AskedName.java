package bandwright.pipeline.artwork;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A name from a row or a table, before it is looked up: {@code birds\heron.jpg} is {@code birds/heron.jpg}. It is only
 * ever compared with the names that the folder has, never turned into a path.
 *
 * @param text with slashes, without {@code .} steps
 * @param flaw why it isn't looked up at all
 */
record AskedName(String text, Optional<Flaw> flaw) {
    private static final int MOST_CHARACTERS = 1024;

    static AskedName of(String name) {
        String text = Normalizer.normalize(name.strip(), Normalizer.Form.NFC).replace('\\', '/');
        if (text.length() > MOST_CHARACTERS || text.chars().anyMatch(Character::isISOControl)) {
            return new AskedName(printable(text), Optional.of(Flaw.NAME));
        }
        List<String> steps = new ArrayList<>();
        for (String step : text.split("/", -1)) {
            if (step.strip().equals("..")) {
                return new AskedName(text, Optional.of(Flaw.OUTSIDE));
            }
            if (!step.isBlank() && !step.equals(".")) {
                steps.add(step);
            }
        }
        boolean drive = text.length() > 1 && text.charAt(1) == ':' && Character.isLetter(text.charAt(0));
        if (text.startsWith("/") || drive) {
            return new AskedName(text, Optional.of(Flaw.OUTSIDE));
        }
        return new AskedName(String.join("/", steps), Optional.empty());
    }

    private static String printable(String text) {
        String shortened = text.substring(0, Math.min(80, text.length()));
        return shortened
                .codePoints()
                .map(c -> Character.isISOControl(c) ? '?' : c)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }
}
