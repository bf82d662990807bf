package bandwright.checks.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.logging.LogManager;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever bytes come in, each reader takes them or refuses them in one plain line with a cure; it throws nothing else,
 * ends within its time and, as the build's Java has 1 GB, within its memory. A short attack of fixed numbers;
 * {@link LongAttackTest} goes on where it ends.
 */
final class HostileTest {
    /** Tries of a target; those that print a whole run take a hundred times as long. */
    private static final int TRIES = 60;

    private static final Map<String, Integer> FEWER =
            Map.of("run", 4, "printed", 6, "font", 4, "profile", 6, "pdf", 20, "svg", 40, "ledger", 20);

    private static final int TRIES_OF_A_TABLE = 12;

    @TempDir
    static Path scratch;

    @BeforeAll
    static void librariesAreQuiet() {
        LogManager.getLogManager().reset();
    }

    @TestFactory
    List<DynamicTest> everyReaderTakesOrRefuses() throws Exception {
        return new Targets(scratch)
                .all().stream()
                        .map(target -> DynamicTest.dynamicTest(target.name(), () -> attack(target)))
                        .toList();
    }

    static int tries(Target target) {
        return target.name().startsWith("table-") ? TRIES_OF_A_TABLE : FEWER.getOrDefault(target.name(), TRIES);
    }

    private static void attack(Target target) throws Exception {
        Attack attack = new Attack(target).known().broken(0, tries(target));
        assertThat(attack.findings()).as("%s", attack).isEmpty();
        // A sieve that lets everything through, or nothing, would prove nothing; few fonts are so broken that none is
        // used.
        assertThat(attack.ends().size())
                .as("%s", attack)
                .isGreaterThan(target.name().equals("font") ? 0 : 1);
    }

    @Test
    void aReaderThatThrowsIsFoundAndItsInputKept() throws Exception {
        Target fragile = new Target("fragile", List.of(new byte[] {1}), Mending.NONE, List.of(), input -> {
            if (input.length > 1) {
                throw new IllegalStateException("a second byte");
            }
            return "taken";
        });

        Attack attack = new Attack(fragile).known().broken(0, 50);

        assertThat(attack.findings()).hasSize(1).first().asString().contains("IllegalStateException");
        assertThat(attack.ends()).containsKeys("taken", "BROKEN");
        try (var kept = Files.list(Path.of("target", "hostile", "fragile"))) {
            assertThat(kept).isNotEmpty();
        }
    }

    @Test
    void theSameNumberIsTheSameInput() throws Exception {
        Target target = new Target("same", OrderSeeds.text(','), Mending.NONE, List.of("Q1"), input -> "");
        Set<String> inputs = new HashSet<>();

        for (int number = 0; number < 50; number++) {
            assertThat(Mutation.of(target, number)).isEqualTo(Mutation.of(target, number));
            inputs.add(Arrays.toString(Mutation.of(target, number)));
        }
        assertThat(inputs).hasSizeGreaterThan(40);
    }
}
