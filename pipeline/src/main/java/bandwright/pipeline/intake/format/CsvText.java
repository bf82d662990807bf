package bandwright.pipeline.intake.format;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * A text file and the alphabet it is in, read from front to back each time it is opened: its mark if it has one (UTF-8, UTF-16), else UTF-8 if all of
 * it is, else windows-1252. Bytes that are no text, and web pages that call themselves spreadsheets, are refused.
 */
final class CsvText {
    private static final Charset WINDOWS = Charset.forName("windows-1252");
    private static final byte[] UTF8_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};
    private static final byte[] LITTLE_MARK = {(byte) 0xFF, (byte) 0xFE};
    private static final byte[] BIG_MARK = {(byte) 0xFE, (byte) 0xFF};

    private final Path file;
    private final int from;
    private final Charset charset;

    private CsvText(Path file, int from, Charset charset) {
        this.file = file;
        this.from = from;
        this.charset = charset;
    }

    static CsvText read(Path file) throws IOException, Unreadable {
        CsvText text = of(file);
        String start = text.start();
        if (start.indexOf('\0') >= 0) {
            throw Unreadable.of("file-not-text");
        }
        String folded = start.stripLeading().toLowerCase(Locale.ROOT);
        if (folded.startsWith("<")) {
            throw Unreadable.of("format-html");
        }
        return text;
    }

    Reader open() throws IOException {
        InputStream in = Files.newInputStream(file);
        in.skipNBytes(from);
        return new InputStreamReader(in, charset);
    }

    private static CsvText of(Path file) throws IOException {
        byte[] start = Formats.start(file);
        if (Formats.startsWith(start, UTF8_MARK)) {
            return new CsvText(file, 3, StandardCharsets.UTF_8);
        }
        if (Formats.startsWith(start, LITTLE_MARK)) {
            return new CsvText(file, 2, StandardCharsets.UTF_16LE);
        }
        if (Formats.startsWith(start, BIG_MARK)) {
            return new CsvText(file, 2, StandardCharsets.UTF_16BE);
        }
        return new CsvText(file, 0, isUtf8(file) ? StandardCharsets.UTF_8 : WINDOWS);
    }

    private String start() throws IOException {
        char[] start = new char[4096];
        try (Reader in = open()) {
            int read = in.read(start);
            return read <= 0 ? "" : new String(start, 0, read);
        }
    }

    private static boolean isUtf8(Path file) throws IOException {
        CharsetDecoder strict = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        char[] some = new char[8192];
        try (Reader in = new InputStreamReader(Files.newInputStream(file), strict)) {
            int read = 0;
            while (read >= 0) {
                read = in.read(some);
            }
            return true;
        } catch (CharacterCodingException e) {
            return false;
        }
    }
}
