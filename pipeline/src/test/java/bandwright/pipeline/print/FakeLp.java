package bandwright.pipeline.print;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** A program in lp's place that writes down, word by word, what it is asked, and then does what a test wants. */
record FakeLp(Path folder) {
    /**
     * @param then lines of a shell script
     */
    Lp that(String... then) throws IOException {
        Path program = folder.resolve("lp");
        List<String> lines = new ArrayList<>(List.of(
                "#!/bin/sh",
                "{ printf '%s\\0' \"$@\"; printf '\\n\\0'; } >> '" + folder.resolve("asked") + "'",
                "cat > /dev/null"));
        lines.addAll(List.of(then));
        Files.write(program, lines);
        Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwxr-xr-x"));
        return new Lp(program.toString(), Duration.ofSeconds(20));
    }

    /** The words of each call. */
    List<List<String>> asked() throws IOException {
        Path file = folder.resolve("asked");
        if (!Files.exists(file)) {
            return List.of();
        }
        List<List<String>> calls = new ArrayList<>();
        List<String> words = new ArrayList<>();
        for (String word : Files.readString(file, StandardCharsets.UTF_8).split("\0", -1)) {
            if (word.equals("\n")) {
                calls.add(List.copyOf(words));
                words.clear();
            } else {
                words.add(word);
            }
        }
        return calls;
    }
}
