package bandwright.pipeline.intake.format;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Whether a compound file is a workbook with a password: then its directory names a stream "EncryptedPackage"
 * (MS-OFFCRYPTO 2.3.4.4), whatever the file's ending says.
 */
final class OldWorkbook {
    private static final byte[] NAME = "EncryptedPackage".getBytes(StandardCharsets.UTF_16LE);

    private OldWorkbook() {}

    static boolean isEncrypted(Path file) throws IOException {
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file), 1 << 16)) {
            int matched = 0;
            for (int b = in.read(); b >= 0; b = in.read()) {
                // Enough of a search: no end of this name is also its beginning, but for the first letter.
                matched = b == NAME[matched] ? matched + 1 : b == NAME[0] ? 1 : 0;
                if (matched == NAME.length) {
                    return true;
                }
            }
            return false;
        }
    }
}
