package bandwright.pipeline.docs;

import bandwright.rules.words.Words;
import java.util.List;

/** A page in Markdown, line by line; its sentences stand in words.properties under {@code docs}. */
final class Doc {
    private final StringBuilder text = new StringBuilder();

    static String say(String key, Object... about) {
        return Words.say("docs." + key, about);
    }

    Doc heading(int level, String words) {
        text.append("#".repeat(level)).append(' ').append(words).append("\n\n");
        return this;
    }

    Doc paragraph(String words) {
        text.append(words).append("\n\n");
        return this;
    }

    /** @param head the header row as it stands, bars and all */
    Doc table(String head, List<List<String>> rows) {
        text.append(head).append('\n');
        text.append("| --- ".repeat(Math.max(1, count(head) - 1))).append("|\n");
        for (List<String> row : rows) {
            row.forEach(cell -> text.append("| ").append(escaped(cell)).append(' '));
            text.append("|\n");
        }
        text.append('\n');
        return this;
    }

    private static int count(String head) {
        return (int) head.chars().filter(c -> c == '|').count();
    }

    private static String escaped(String cell) {
        return cell.replace("|", "\\|").replace('\n', ' ');
    }

    String text() {
        return text.toString().stripTrailing() + "\n";
    }
}
