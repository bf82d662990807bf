package bandwright.checks.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Pattern;

/** What a person is told when something is refused: one plain line and a cure, nothing of the program's inside. */
final class Told {
    private static final Pattern INSIDE =
            Pattern.compile("\\b(java|sun|org)\\.[a-z]+\\.|[a-z](Exception|Error)\\b|\\bnull\\b");

    private Told() {}

    static void plainly(String message, String cure) {
        line("message", message);
        line("cure", cure);
    }

    /** Both in one. */
    static void line(String what, String line) {
        assertThat(line).as(what).isNotBlank();
        assertThat(line.codePoints().anyMatch(c -> c == '\n' || c == '\r' || c == 0x1B || c == 0x2028 || c == 0x85))
                .as("%s in one line: %s", what, line)
                .isFalse();
        assertThat(INSIDE.matcher(line).find())
                .as("%s in a shop's words: %s", what, line)
                .isFalse();
    }
}
