package bandwright.pipeline.intake.format;

import bandwright.pipeline.limits.Limits;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * The bytes of a text file and the alphabet they are in: its mark if it has one (UTF-8, UTF-16), else UTF-8 if all of
 * it is, else windows-1252. Bytes that are no text, and web pages that call themselves spreadsheets, are refused.
 */
final class CsvText {
    private static final Charset WINDOWS = Charset.forName("windows-1252");
    private static final byte[] UTF8_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};
    private static final byte[] LITTLE_MARK = {(byte) 0xFF, (byte) 0xFE};
    private static final byte[] BIG_MARK = {(byte) 0xFE, (byte) 0xFF};

    private final byte[] bytes;
    private final int from;
    private final Charset charset;

    private CsvText(byte[] bytes, int from, Charset charset) {
        this.bytes = bytes;
        this.from = from;
        this.charset = charset;
    }

    static CsvText read(Path file) throws IOException, Unreadable {
        CsvText text = of(bytes(file));
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

    Reader open() {
        return new InputStreamReader(new ByteArrayInputStream(bytes, from, bytes.length - from), charset);
    }

    private static byte[] bytes(Path file) throws IOException, Unreadable {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes((int) Limits.ORDER_FILE_BYTES + 1);
            if (bytes.length > Limits.ORDER_FILE_BYTES) {
                throw Unreadable.of("file-too-large", Limits.ORDER_FILE_BYTES >> 20);
            }
            return bytes;
        }
    }

    private static CsvText of(byte[] bytes) {
        if (Formats.startsWith(bytes, UTF8_MARK)) {
            return new CsvText(bytes, 3, StandardCharsets.UTF_8);
        }
        if (Formats.startsWith(bytes, LITTLE_MARK)) {
            return new CsvText(bytes, 2, StandardCharsets.UTF_16LE);
        }
        if (Formats.startsWith(bytes, BIG_MARK)) {
            return new CsvText(bytes, 2, StandardCharsets.UTF_16BE);
        }
        return new CsvText(bytes, 0, isUtf8(bytes) ? StandardCharsets.UTF_8 : WINDOWS);
    }

    private String start() throws IOException {
        char[] start = new char[4096];
        try (Reader in = open()) {
            int read = in.read(start);
            return read <= 0 ? "" : new String(start, 0, read);
        }
    }

    private static boolean isUtf8(byte[] bytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(8192);
        while (true) {
            var result = decoder.decode(in, out.clear(), true);
            if (result.isError()) {
                return false;
            }
            if (result.isUnderflow()) {
                return true;
            }
        }
    }
}
