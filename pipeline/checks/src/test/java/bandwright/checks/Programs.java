package bandwright.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** Programs of others that look at what was written; a computer that lacks one skips its test. */
public final class Programs {
    private Programs() {}

    public static boolean has(String program) {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator, -1))
                .anyMatch(place -> Files.isExecutable(Path.of(place, program)));
    }

    /** What it says; it must end well. */
    static String run(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(String.join(" ", command)).isZero();
        return said;
    }
}
