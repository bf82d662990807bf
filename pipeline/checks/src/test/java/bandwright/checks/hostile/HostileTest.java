package bandwright.checks.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.LogManager;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class HostileTest {
    @TempDir
    Path scratch;

    @Test
    void every() throws Exception {
        LogManager.getLogManager().reset();
        List<String> findings = new ArrayList<>();
        String only = System.getProperty("hostile.only", "");
        int many = Integer.getInteger("hostile.tries", 20);
        for (Target target : new Targets(scratch).all()) {
            if (!only.isEmpty() && !target.name().matches(only)) continue;
            long t = System.nanoTime();
            Attack a = new Attack(target).known().broken(Long.getLong("hostile.from", 1), many);
            System.out.println(a + " " + (System.nanoTime() - t) / 1_000_000 + " ms");
            findings.addAll(a.findings());
        }
        findings.forEach(System.out::println);
        assertThat(findings).isEmpty();
    }
}
