package bandwright.pipeline.artwork.vector;

import bandwright.pipeline.artwork.Flaw;
import bandwright.pipeline.artwork.RefusedPicture;
import bandwright.pipeline.limits.Limits;
import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPInputStream;
import javax.xml.XMLConstants;
import javax.xml.stream.XMLInputFactory;

/** The bytes of an SVG file, unpacked if it is a .svgz, and how they are parsed: without entities, without the world. */
final class SvgFile {
    /** The two bytes that a gzip file begins with (RFC 1952, 2.3.1). */
    private static final int GZIP = 0x1F8B;

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

    /** A parser of these bytes that resolves nothing. */
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
