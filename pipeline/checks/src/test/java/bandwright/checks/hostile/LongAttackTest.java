package bandwright.checks.hostile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.LogManager;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/** Attacks every reader, or those that a pattern names, for so many minutes: see DEVELOPERS.md. */
@EnabledIfSystemProperty(named = "hostile.minutes", matches = "[0-9]+")
final class LongAttackTest {
    private static final String ENGINE = "com.code_intelligence.jazzer.Jazzer";
    private static final int FIRST = 1_000;

    @TempDir
    Path scratch;

    /** By numbers that go on where the short attack ends; each target in turn, and after each round what came of it. */
    @Test
    void byNumbers() throws Exception {
        LogManager.getLogManager().reset();
        long end = System.nanoTime() + minutes() * 60_000_000_000L;
        List<Attack> attacks =
                new ArrayList<>(targets().stream().map(Attack::new).toList());
        for (int round = 0; System.nanoTime() < end; round++) {
            for (Attack attack : attacks) {
                if (System.nanoTime() < end) {
                    attack.round(Integer.getInteger("hostile.from", FIRST), round);
                    System.out.println(attack);
                    attack.news().forEach(System.out::println);
                }
            }
        }
        assertThat(attacks.stream().flatMap(attack -> attack.findings().stream()))
                .isEmpty();
    }

    /** By which branches an input takes; with the profile that has the engine. Minutes are parted among the targets. */
    @Test
    void byBranches() throws Exception {
        assumeTrue(hasEngine(), "mvn -P hostile");
        List<Target> targets = targets();
        long seconds = Math.max(10, minutes() * 60 / targets.size());
        List<String> findings = new ArrayList<>();
        for (Target target : targets) {
            Path corpus = Files.createDirectories(scratch.resolve(target.name()));
            for (int i = 0; i < target.seeds().size(); i++) {
                Files.write(corpus.resolve("seed-" + i), target.seeds().get(i));
            }
            if (guided(target, corpus, seconds).waitFor() != 0) {
                findings.add(target.name() + ": see target/hostile/" + target.name());
            }
        }
        assertThat(findings).isEmpty();
    }

    private static Process guided(Target target, Path corpus, long seconds) throws Exception {
        Path kept = Files.createDirectories(Path.of("target", "hostile", target.name()));
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx1g",
                        "-XX:+UseSerialGC",
                        "-Djava.awt.headless=true",
                        "-cp",
                        System.getProperty("java.class.path"),
                        ENGINE,
                        "--target_class=" + Guided.class.getName(),
                        "--target_args=" + target.name(),
                        "--instrumentation_includes=bandwright.pipeline.**:bandwright.rules.**",
                        "--disabled_hooks=com.code_intelligence.jazzer.sanitizers.*",
                        "--reproducer_path=" + kept,
                        corpus.toString(),
                        "-artifact_prefix=" + kept + File.separator,
                        "-max_total_time=" + seconds,
                        "-timeout=30",
                        "-rss_limit_mb=0",
                        "-print_final_stats=1")
                .redirectErrorStream(true)
                .redirectOutput(kept.resolve("engine.log").toFile())
                .start();
    }

    private List<Target> targets() throws Exception {
        String only = System.getProperty("hostile.only", ".*");
        return new Targets(scratch)
                .all().stream().filter(target -> target.name().matches(only)).toList();
    }

    private static int minutes() {
        return Integer.getInteger("hostile.minutes");
    }

    private static boolean hasEngine() {
        try {
            Class.forName(ENGINE, false, LongAttackTest.class.getClassLoader());
            return true;
        } catch (ClassNotFoundException e) {
            return false;
        }
    }
}
