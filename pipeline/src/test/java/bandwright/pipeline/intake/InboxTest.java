package bandwright.pipeline.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InboxTest {
    @TempDir
    Path folder;

    @Test
    void aFolderGivesItsOrderFilesByName() throws Exception {
        for (String name : List.of("b.CSV", "a.xlsx", "B.tsv", "é.ods", "c.XLS", "a.csv")) {
            Files.createFile(folder.resolve(name));
        }
        assertThat(names(folder)).containsExactly("B.tsv", "a.csv", "a.xlsx", "b.CSV", "c.XLS", "é.ods");
    }

    @Test
    void lockFilesAndHiddenFilesAndFoldersAreNone() throws Exception {
        for (String name : List.of("~$a.xlsx", ".~lock.a.csv#", ".a.csv", "a.txt", "a.csv.part", "csv", "held.json")) {
            Files.createFile(folder.resolve(name));
        }
        Files.createDirectories(folder.resolve("old.csv"));
        Files.createFile(folder.resolve("old.csv").resolve("old.csv"));
        assertThat(names(folder)).isEmpty();
    }

    @Test
    void namesSortByCodePointWhateverTheAlphabet() throws Exception {
        String beyond = "\uD83C\uDF0A.csv"; // a wave, above all that Java keeps in one char
        String full = "\uFF21.csv"; // a wide A, above the halves of the wave but below the wave
        Files.createFile(folder.resolve(beyond));
        Files.createFile(folder.resolve(full));
        assertThat(names(folder)).containsExactly(full, beyond);
    }

    @Test
    void aFileNamedTwiceIsReadOnce() throws Exception {
        Path file = Files.createFile(folder.resolve("a.csv"));
        assertThat(names(file, folder, folder.resolve("../" + folder.getFileName() + "/a.csv")))
                .containsExactly("a.csv");
    }

    @Test
    void whatIsNotThereIsSaidWithACure() throws IOException {
        assertThat(fault(folder.resolve("none"))).contains("There is no ");
        assertThat(fault(Files.createFile(folder.resolve("a.txt")))).contains("is not an order file");
    }

    private static String fault(Path path) {
        InboxFault fault = catchThrowableOfType(InboxFault.class, () -> Inbox.files(List.of(path)));
        assertThat(fault.cure()).isNotBlank();
        return fault.getMessage();
    }

    private static List<String> names(Path... inbox) throws InboxFault {
        return Inbox.files(List.of(inbox)).stream()
                .map(file -> file.getFileName().toString())
                .toList();
    }
}
