package bandwright.pipeline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Follows docs/first-day.md word by word: makes its folders and files, types its commands, reads what they print. */
final class FirstDayTest {
    private static final Path PROGRAM = Path.of("..");
    private static final Pattern STEP = Pattern.compile("(?s)(?:`([^`\n]+)`:\n\n)?```(sh|text|csv)\n(.*?)```");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @TempDir
    Path folder;

    private StringWriter printed = new StringWriter();

    @Test
    void thePageCanBeFollowedWordByWord() throws IOException {
        Matcher step = STEP.matcher(Files.readString(PROGRAM.resolve("docs/first-day.md")));
        int steps = 0;
        while (step.find()) {
            String text = step.group(3);
            switch (step.group(2)) {
                case "csv" -> Files.writeString(folder.resolve(step.group(1)), text);
                case "sh" -> type(text);
                default -> assertThat(shown()).isEqualTo(text.strip());
            }
            steps++;
        }
        assertThat(steps).isGreaterThan(15);
    }

    private void type(String lines) throws IOException {
        printed = new StringWriter();
        for (String line : lines.strip().split("\n", -1)) {
            String[] words = WORD.matcher(line)
                    .results()
                    .map(found -> found.group(1) == null ? found.group(2) : found.group(1))
                    .toArray(String[]::new);
            switch (words[0]) {
                case "mkdir" -> Arrays.stream(words).skip(2).forEach(this::makeFolder);
                case "cp" -> Files.copy(at(words[1]), at(words[2]));
                default -> bandwright(Arrays.copyOfRange(words, 1, words.length));
            }
        }
    }

    private void makeFolder(String name) {
        assertThat(folder.resolve(name).toFile().mkdirs()).isTrue();
    }

    /** On the day that the page tells of, with every path inside the test's own folder. */
    private void bandwright(String... words) {
        String[] typed = Arrays.stream(words)
                .map(word -> word.matches("(inbox-sample|shop/.*|outbox)") ? at(word).toString() : word)
                .toArray(String[]::new);
        boolean isUndated = words[0].equals("run") && !Arrays.asList(words).contains("--date");
        if (isUndated) {
            typed = Arrays.copyOf(typed, typed.length + 2);
            typed[typed.length - 2] = "--date";
            typed[typed.length - 1] = "2026-03-02";
        }
        PrintWriter out = new PrintWriter(printed);
        int code = Main.run(out, out, false, typed);
        assertThat(code).as("%s: %s", String.join(" ", words), printed).isIn(ExitCode.DONE, ExitCode.NEEDS_A_PERSON);
    }

    /** What is copied comes from the program's folder, all else lies in the shop's. */
    private Path at(String name) {
        boolean isProgram = name.startsWith("inbox-sample") || name.startsWith("rules/");
        return isProgram ? PROGRAM.resolve(name) : folder.resolve(name);
    }

    private String shown() {
        return printed.toString().strip().replace(folder + "/", "").replace(folder + "\\", "");
    }
}
