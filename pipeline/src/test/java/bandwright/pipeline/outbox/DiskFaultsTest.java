package bandwright.pipeline.outbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class DiskFaultsTest {
    @TempDir
    Path outbox;

    @ParameterizedTest
    @MethodSource("failures")
    void aFailureOfTheDiskIsSaidInPlainWords(Exception failure, String said) {
        OutboxFault fault = DiskFaults.of(failure, outbox);

        assertThat(fault).hasMessageContaining(said).hasMessageContaining(outbox.toString());
        assertThat(fault.getMessage()).doesNotContain("Exception", "\n");
        assertThat(fault.cure()).isNotBlank();
    }

    static Stream<Arguments> failures() {
        return Stream.of(
                Arguments.of(new IOException("No space left on device"), "is full"),
                Arguments.of(new IOException("There is not enough space on the disk"), "is full"),
                Arguments.of(new IOException("Disk quota exceeded"), "is full"),
                Arguments.of(new UncheckedIOException(new IOException("No space left on device")), "is full"),
                Arguments.of(new FileSystemException("a", null, "Read-only file system"), "only be read"),
                Arguments.of(new ReadOnlyFileSystemException(), "only be read"),
                Arguments.of(new AccessDeniedException("a"), "may not write"),
                Arguments.of(new FileSystemException("a", null, "Input/output error"), "a: Input/output error"),
                Arguments.of(new IOException("two\nlines"), "refused to write"));
    }
}
