package bandwright.rules;

import static org.assertj.core.api.Assertions.fail;

import bandwright.rules.table.Fault;
import bandwright.rules.table.RulesFolder;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** A small built-in rulebook for tests, and a folder in which a test puts tables of its own. */
record SmallTables(Path folder) {
    private static final String BUILT_IN = "/bandwright/small-tables";

    static Rulebook builtIn() throws RulebookFaults {
        return RulebookTables.read(new RulesFolder(BUILT_IN, Optional.empty()));
    }

    /** The text of a small built-in table. */
    static String text(String file) throws IOException {
        try (InputStream in = SmallTables.class.getResourceAsStream(BUILT_IN + "/" + file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    SmallTables with(String file, String... lines) throws IOException {
        Files.writeString(folder.resolve(file), String.join("\n", lines));
        return this;
    }

    /** The small table with some more rows. */
    SmallTables plus(String file, String... rows) throws IOException {
        return with(file, text(file) + String.join("\n", rows));
    }

    Rulebook read() throws RulebookFaults {
        return RulebookTables.read(new RulesFolder(BUILT_IN, Optional.of(folder)));
    }

    List<Fault> faults() {
        try {
            return fail("no faults in " + read());
        } catch (RulebookFaults faults) {
            return faults.faults();
        }
    }

    List<String> faultLines() {
        return faults().stream().map(Fault::line).toList();
    }
}
