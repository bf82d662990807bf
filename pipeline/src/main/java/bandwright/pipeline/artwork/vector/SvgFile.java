package bandwright.pipeline.artwork.vector;

import bandwright.pipeline.artwork.Flaw;
import bandwright.pipeline.artwork.RefusedPicture;
import bandwright.pipeline.limits.Limits;
import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.CharArrayReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.GZIPInputStream;
import javax.xml.XMLConstants;
import javax.xml.stream.XMLInputFactory;

/** The bytes of an SVG file, unpacked if it is a .svgz, and how they are parsed: without entities, without the world. */
final class SvgFile {
    /** The two bytes that a gzip file begins with (RFC 1952, 2.3.1). */
    private static final int GZIP = 0x1F8B;

    private static final Pattern ENCODING =
            Pattern.compile("(?:\u00EF\u00BB\u00BF)?<\\?xml[^>]*?\\sencoding\\s*=\\s*[\"']([A-Za-z0-9._:-]+)[\"']");

    private static final int START = 200;
    private static final char MARK = '\uFEFF';

    private SvgFile() {}

    static byte[] read(Path path) throws IOException {
        try (InputStream file = new BufferedInputStream(Files.newInputStream(path))) {
            file.mark(2);
            boolean isPacked = (file.read() << 8 | file.read()) == GZIP;
            file.reset();
            InputStream in = isPacked ? new GZIPInputStream(file) : file;
            byte[] bytes = in.readNBytes(Limits.SVG_BYTES + 1);
            if (bytes.length > Limits.SVG_BYTES) {
                throw new RefusedPicture(Flaw.TOO_COMPLEX);
            }
            refuseEntities(bytes);
            return bytes;
        }
    }

    /** A document type that names a standard is passed over; one that defines words of its own isn't expanded. */
    private static void refuseEntities(byte[] bytes) throws RefusedPicture {
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        if (text.contains("<!ENTITY") || text.contains("<\0!\0E\0N\0T\0I\0T\0Y")) {
            throw new RefusedPicture(Flaw.ENTITIES);
        }
    }

    /**
     * The characters of an SVG, in the encoding that it begins with or says (XML 1.0, 4.3.3). Decoded here, as the JDK's
     * XML reader writes to the error stream when a byte is wrong.
     */
    static Reader text(byte[] bytes) throws RefusedPicture {
        try {
            CharBuffer text = encoding(bytes)
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes));
            boolean isMarked = text.hasRemaining() && text.get(0) == MARK;
            return new CharArrayReader(
                    text.array(), text.position() + (isMarked ? 1 : 0), text.remaining() - (isMarked ? 1 : 0));
        } catch (CharacterCodingException | IllegalArgumentException e) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
    }

    private static Charset encoding(byte[] bytes) {
        String start = new String(bytes, 0, Math.min(bytes.length, START), StandardCharsets.ISO_8859_1);
        if (start.startsWith("\u00FE\u00FF") || start.startsWith("\u00FF\u00FE")) {
            return StandardCharsets.UTF_16;
        }
        if (start.startsWith("<\0?")) {
            return StandardCharsets.UTF_16LE;
        }
        if (start.startsWith("\0<\0?")) {
            return StandardCharsets.UTF_16BE;
        }
        Matcher said = ENCODING.matcher(start);
        return said.lookingAt() ? Charset.forName(said.group(1)) : StandardCharsets.UTF_8;
    }

    /** A parser that resolves nothing. */
    static XMLInputFactory parsers() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        factory.setXMLResolver((publicId, systemId, base, namespace) -> new ByteArrayInputStream(new byte[0]));
        return factory;
    }
}
