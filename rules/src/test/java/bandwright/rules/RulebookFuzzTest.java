package bandwright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.table.Fault;
import bandwright.rules.table.TableKind;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever somebody's folder holds, reading it ends in a rulebook or in faults with cures. */
class RulebookFuzzTest {
    private static final int MUTATIONS = 500;
    private static final List<TableKind> KINDS = List.of(TableKind.values());
    private static final String[] SPICE = {
        ",",
        "\"",
        "\n",
        "\r\n",
        "|",
        "%",
        "-",
        "1e999",
        "NaN",
        "9 7/8 in",
        "0",
        "/",
        "\u0000",
        "\uFEFF",
        "é",
        "yes",
        "no",
        "flat",
        "cone",
        "999999999999",
        "&",
        ":",
        "=",
        "clamp",
        "..",
        "/etc",
        "#FFF",
        "-5 mm",
        "𝔘",
        "\u202e",
        ";",
        "1/0",
        "190 C",
        "3 min"
    };

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void anyTableEndsInARulebookOrInFaults(long seed) throws Exception {
        SplittableRandom random = new SplittableRandom(seed);
        int sound = 0;
        for (int i = 0; i < MUTATIONS; i++) {
            String about = "seed " + seed + ", mutation " + i;
            for (int n = random.nextInt(1, 4); n > 0; n--) {
                TableKind kind = KINDS.get(random.nextInt(KINDS.size()));
                Files.write(folder.resolve(kind.file()), mutated(kind, random));
            }
            sound += isSound(about) ? 1 : 0;
            for (TableKind kind : TableKind.values()) {
                Files.deleteIfExists(folder.resolve(kind.file()));
            }
        }
        // A sieve that lets everything through, or nothing, would prove nothing.
        assertThat(sound).as("seed %d", seed).isBetween(1, MUTATIONS - 1);
    }

    private boolean isSound(String about) {
        try {
            assertThat(new SmallTables(folder).read()).as(about).isNotNull();
            return true;
        } catch (RulebookFaults faults) {
            assertThat(faults.faults()).as(about).isNotEmpty().allMatch(fault -> isTold(fault), "told in one line");
            return false;
        } catch (RuntimeException e) {
            throw new AssertionError(about, e);
        }
    }

    private static boolean isTold(Fault fault) {
        return !fault.message().isBlank()
                && !fault.cure().isBlank()
                && fault.line().codePoints().noneMatch(c -> Character.isISOControl(c));
    }

    private static byte[] mutated(TableKind kind, SplittableRandom random) throws Exception {
        StringBuilder text = new StringBuilder(SmallTables.text(kind.file()));
        for (int n = random.nextInt(0, 5); n > 0; n--) {
            int at = random.nextInt(text.length() + 1);
            int to = Math.min(text.length(), at + random.nextInt(12));
            text.replace(at, random.nextBoolean() ? at : to, SPICE[random.nextInt(SPICE.length)]);
        }
        byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
        if (random.nextInt(4) == 0) {
            for (int n = random.nextInt(1, 20); n > 0; n--) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            }
        }
        return bytes;
    }
}
