package bandwright.checks.faults;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import bandwright.checks.Programs;
import bandwright.checks.WholeRun;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The disk says no to one kind of call on one file of a run: full, broken or closed. Nothing is published, one line says
 * so, and once the disk is well the same run is made as if nothing had been.
 */
final class FailingDiskTest {
    private static final String MAKING = "outbox/.making-2026-03-02-1";

    @TempDir
    Path folder;

    private Path home;

    @BeforeEach
    void strace() throws Exception {
        assumeTrue(Programs.has("strace"), "strace");
        home = folder.toRealPath();
        Files.writeString(home.resolve("orders.csv"), "Order,SKU,Design,Qty\nQ1,COAST-S,lamp,1\n");
    }

    @ParameterizedTest(name = "{0} on {2}: {1}")
    @CsvSource({
        "write,    ENOSPC, " + MAKING + "/run.json,             is full",
        "fsync,    EIO,    " + MAKING + "/run.json,             Input/output error",
        "mkdir,    EROFS,  " + MAKING + ",                      only be read",
        "rename,   EACCES, " + MAKING + ",                      may not write",
        "pwrite64, ENOSPC, outbox/ledger.db,                    is full",
        "fsync,    EIO,    outbox/ledger.db,                    disk I/O error",
    })
    void aDiskThatSaysNo(String call, String error, String file, String said) throws Exception {
        List<String> looked = List.of(
                "strace",
                "-f",
                "--seccomp-bpf",
                "-o",
                home.resolve("log").toString(),
                "-P",
                home.resolve(file).toString(),
                "-e",
                "trace=" + call,
                "-e",
                "inject=" + call + ":error=" + error);
        int code = run(looked);
        String heard = Files.readString(home.resolve("said"));
        assumeTrue(Files.exists(home.resolve("outbox")) || !heard.contains("ptrace"), "a system that lets strace look");

        assertThat(Files.readString(home.resolve("log"))).contains("(INJECTED)");
        assertThat(code).as(heard).isEqualTo(1);
        assertThat(heard.strip().lines()).as(heard).hasSize(1);
        assertThat(heard).contains(said).doesNotContain("Exception", "SQLITE");
        assertThat(names()).doesNotContain("2026-03-02-1");

        assertThat(run(List.of())).as(Files.readString(home.resolve("said"))).isZero();
        assertThat(names()).containsExactly("2026-03-02-1", "ledger.db", "ledger.lock");
    }

    private int run(List<String> before) throws Exception {
        List<String> command = new ArrayList<>(before);
        command.addAll(WholeRun.command(
                List.of("-XX:TieredStopAtLevel=1"),
                "run",
                home.resolve("orders.csv").toString(),
                "--artwork",
                WholeRun.SAMPLE.resolve("artwork").toString(),
                "--out",
                home.resolve("outbox").toString(),
                "--date",
                "2026-03-02"));
        return new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(home.resolve("said").toFile())
                .start()
                .waitFor();
    }

    private List<String> names() throws Exception {
        try (Stream<Path> names = Files.list(home.resolve("outbox"))) {
            return names.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
