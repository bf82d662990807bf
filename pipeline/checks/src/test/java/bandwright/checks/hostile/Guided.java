package bandwright.checks.hostile;

import java.nio.file.Files;
import java.util.logging.LogManager;

/** One target for a fuzzer that is led by which branches an input takes: see DEVELOPERS.md. */
public final class Guided {
    private static Target.Trial trial = input -> "";

    private Guided() {}

    /**
     * Chooses the target.
     *
     * @param args its name
     */
    public static void fuzzerInitialize(String[] args) throws Exception {
        LogManager.getLogManager().reset();
        trial = new Targets(Files.createTempDirectory("hostile"))
                .all().stream()
                        .filter(target -> target.name().equals(args[0]))
                        .findFirst()
                        .orElseThrow()
                        .trial();
    }

    public static void fuzzerTestOneInput(byte[] input) throws Exception {
        trial.of(input);
    }
}
