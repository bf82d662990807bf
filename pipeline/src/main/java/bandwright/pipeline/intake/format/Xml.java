package bandwright.pipeline.intake.format;

import bandwright.pipeline.limits.Limits;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * One XML part, read from front to back without a tree. Declares no entity, fetches nothing, goes no deeper than any
 * table does. Names are compared without their namespace: the strict and the transitional form differ only there.
 */
final class Xml implements Closeable {
    private static final int DEPTH = 100;
    private static final byte[] UTF8_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};
    private static final byte[] LITTLE_MARK = {(byte) 0xFF, (byte) 0xFE};
    private static final byte[] BIG_MARK = {(byte) 0xFE, (byte) 0xFF};
    private static final XMLInputFactory FACTORY = factory();

    private final XMLStreamReader reader;
    private final UnpackedBytes.Stream in;
    private int event = XMLStreamConstants.START_DOCUMENT;
    private int depth;

    private Xml(XMLStreamReader reader, UnpackedBytes.Stream in) {
        this.reader = reader;
        this.in = in;
    }

    static Xml open(UnpackedBytes.Stream in) throws IOException, Unreadable {
        try {
            return new Xml(FACTORY.createXMLStreamReader(decoded(in)), in);
        } catch (XMLStreamException e) {
            throw plain(e);
        }
    }

    /**
     * The characters of a part, which is in UTF-8 or in UTF-16 with its mark (ECMA-376 Part 2, 8.2). Decoded here, as the
     * JDK's XML reader writes to the error stream when a byte is wrong.
     */
    private static Reader decoded(UnpackedBytes.Stream in) throws IOException {
        PushbackInputStream start = new PushbackInputStream(in, 3);
        byte[] mark = start.readNBytes(3);
        Charset charset = Formats.startsWith(mark, LITTLE_MARK) || Formats.startsWith(mark, BIG_MARK)
                ? StandardCharsets.UTF_16
                : StandardCharsets.UTF_8;
        if (!Formats.startsWith(mark, UTF8_MARK)) {
            start.unread(mark);
        }
        return new InputStreamReader(
                start,
                charset.newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT));
    }

    /** The JDK's own reader, whatever else lies on the class path: its limits are the ones we know. */
    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setXMLResolver((publicId, systemId, base, namespace) -> {
            throw new XMLStreamException("nothing is fetched");
        });
        return factory;
    }

    /** Goes on to the next piece; false at the end. */
    boolean next() throws XMLStreamException, Unreadable {
        try {
            if (!reader.hasNext()) {
                return false;
            }
            event = reader.next();
        } catch (XMLStreamException e) {
            throw plain(e);
        }
        in.next();
        if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
            throw Unreadable.of("xml-doctype");
        }
        depth += event == XMLStreamConstants.START_ELEMENT ? 1 : event == XMLStreamConstants.END_ELEMENT ? -1 : 0;
        if (depth > DEPTH) {
            throw Unreadable.of("file-damaged");
        }
        return event != XMLStreamConstants.END_DOCUMENT;
    }

    private static Unreadable plain(XMLStreamException e) {
        return e.getNestedException() instanceof UnpackedBytes.TooMuch
                ? Unreadable.of("unpacks-too-large", Limits.UNPACKED_BYTES / 1_000_000)
                : Unreadable.of("file-damaged");
    }

    boolean starts(String name) {
        return event == XMLStreamConstants.START_ELEMENT
                && reader.getLocalName().equals(name);
    }

    boolean ends(String name) {
        return event == XMLStreamConstants.END_ELEMENT && reader.getLocalName().equals(name);
    }

    boolean isText() {
        return event == XMLStreamConstants.CHARACTERS
                || event == XMLStreamConstants.CDATA
                || event == XMLStreamConstants.SPACE;
    }

    void addTextTo(StringBuilder text) {
        text.append(reader.getTextCharacters(), reader.getTextStart(), reader.getTextLength());
    }

    /** The attribute of that name without a namespace; empty where there is none. */
    String attribute(String name) {
        return find(name, false).orElse("");
    }

    /** The attribute of that name and namespace; empty where there is none. */
    String attribute(String namespace, String name) {
        String value = reader.getAttributeValue(namespace, name);
        return value == null ? "" : value;
    }

    boolean isStart() {
        return event == XMLStreamConstants.START_ELEMENT;
    }

    boolean startsIn(String namespace) {
        return isStart() && namespace.equals(reader.getNamespaceURI());
    }

    /** Goes on to the end of the element that has just begun. */
    void skip() throws XMLStreamException, Unreadable {
        int above = depth - 1;
        boolean hasMore = true;
        while (depth > above && hasMore) {
            hasMore = next();
        }
    }

    /** The id of another part: an attribute id in the namespace of relationships. */
    String relation() {
        return find("id", true).orElse("");
    }

    private Optional<String> find(String name, boolean inNamespace) {
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            String namespace = reader.getAttributeNamespace(i);
            boolean hasNamespace = namespace != null && !namespace.isEmpty();
            if (hasNamespace == inNamespace && reader.getAttributeLocalName(i).equals(name)) {
                return Optional.of(reader.getAttributeValue(i));
            }
        }
        return Optional.empty();
    }

    /** xsd:boolean. */
    static boolean isTrue(String value) {
        return value.equals("1") || value.equals("true");
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
