package bandwright.checks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Runs the program as its own process, as a shop does, and looks at what it left. */
public final class WholeRun {
    public static final Path SAMPLE =
            Path.of("..", "..", "inbox-sample").toAbsolutePath().normalize();

    private WholeRun() {}

    /** The exit code of {@code bandwright} with these words, on a Java with these options. */
    public static int bandwright(List<String> javaOptions, Map<String, String> environment, String... words)
            throws IOException, InterruptedException {
        return start(javaOptions, environment, words).waitFor();
    }

    /** The same, not waited for. */
    public static Process start(List<String> javaOptions, Map<String, String> environment, String... words)
            throws IOException {
        return start(javaOptions, environment, ProcessBuilder.Redirect.DISCARD, words);
    }

    /** The same, with all that it says going there. */
    static Process start(
            List<String> javaOptions, Map<String, String> environment, ProcessBuilder.Redirect said, String... words)
            throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command(javaOptions, words));
        builder.environment().putAll(environment);
        builder.redirectErrorStream(true).redirectOutput(said);
        return builder.start();
    }

    /** How it is started. */
    public static List<String> command(List<String> javaOptions, String... words) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-Xmx512m", "-XX:+UseSerialGC", "-Djava.awt.headless=true"));
        command.addAll(javaOptions);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), "bandwright.pipeline.cli.Main"));
        command.addAll(List.of(words));
        return command;
    }

    /** Every file below a folder, by its name with slashes. */
    public static Map<String, byte[]> files(Path folder) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
            }
        }
        return files;
    }

    public static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.toList()) {
                Path copy = to.resolve(from.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(copy);
                } else {
                    Files.copy(path, copy);
                }
            }
        }
    }
}
