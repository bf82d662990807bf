package bandwright.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Neither the clock, the place, the language, the folder nor the number of cores shows in what a run writes. */
final class SameInputSameBytesTest {
    @TempDir
    Path folder;

    @Test
    void anotherComputerWritesTheSameBytes() throws IOException, InterruptedException {
        Path elsewhere = folder.resolve("an other f\u00f6lder");
        WholeRun.copy(WholeRun.SAMPLE, elsewhere);
        age(elsewhere);
        Path here = folder.resolve("here");
        Path there = folder.resolve("there");

        int one = WholeRun.bandwright(
                List.of("-Duser.timezone=UTC", "-Duser.language=en"),
                Map.of(),
                "run",
                WholeRun.SAMPLE.toString(),
                "--out",
                here.toString(),
                "--date",
                "2026-03-02");
        int other = WholeRun.bandwright(
                List.of(
                        "-Duser.timezone=Asia/Tokyo",
                        "-Duser.language=tr",
                        "-Duser.country=TR",
                        "-XX:ActiveProcessorCount=1",
                        "-XX:TieredStopAtLevel=1"),
                Map.of("LC_ALL", "C.UTF-8"),
                "run",
                elsewhere.toString(),
                "--out",
                there.toString(),
                "--date",
                "2026-03-02");

        assertThat(one).isEqualTo(3);
        assertThat(other).isEqualTo(3);
        Map<String, byte[]> written = WholeRun.files(here);
        Map<String, byte[]> again = WholeRun.files(there);
        assertThat(again.keySet()).isEqualTo(written.keySet()).contains("2026-03-02-1/run.json");
        written.forEach((name, bytes) -> assertThat(again.get(name)).as(name).isEqualTo(bytes));
    }

    @Test
    void anotherDateShows() throws IOException, InterruptedException {
        Path out = folder.resolve("out");
        for (String date : List.of("2026-03-02", "2026-03-03")) {
            WholeRun.bandwright(
                    List.of(),
                    Map.of(),
                    "run",
                    WholeRun.SAMPLE.toString(),
                    "--out",
                    out.resolve(date).toString(),
                    "--date",
                    date);
        }
        assertThat(Files.readAllBytes(out.resolve("2026-03-02/2026-03-02-1/run.json")))
                .isNotEqualTo(Files.readAllBytes(out.resolve("2026-03-03/2026-03-03-1/run.json")));
    }

    private static void age(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.toList()) {
                Files.setLastModifiedTime(path, FileTime.fromMillis(1_000_000_000_000L));
            }
        }
    }
}
