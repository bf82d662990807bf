package bandwright.pipeline.artwork.vector;

import bandwright.pipeline.artwork.vector.SvgScan.Facts;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.NoSuchElementException;
import java.util.regex.Matcher;
import javax.xml.namespace.QName;
import javax.xml.stream.XMLEventFactory;
import javax.xml.stream.XMLEventReader;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.events.Attribute;
import javax.xml.stream.events.StartElement;
import javax.xml.stream.events.XMLEvent;
import javax.xml.stream.util.EventReaderDelegate;

/**
 * An SVG as the library that draws it gets it: families have the names of the bundled fonts, and a group that is faded
 * as a whole is so by a filter, as the library would fade each of its shapes.
 */
final class SvgEvents extends EventReaderDelegate {
    private static final XMLEventFactory EVENTS = XMLEventFactory.newDefaultFactory();

    private final Facts facts;
    private final Deque<XMLEvent> ready = new ArrayDeque<>();
    private int elements;
    private boolean isStyle;

    SvgEvents(XMLEventReader reader, Facts facts) {
        super(reader);
        this.facts = facts;
    }

    @Override
    public boolean hasNext() {
        return !ready.isEmpty() || super.hasNext();
    }

    @Override
    public XMLEvent peek() throws XMLStreamException {
        if (ready.isEmpty() && super.hasNext()) {
            take(super.nextEvent());
        }
        return ready.peek();
    }

    @Override
    public XMLEvent nextEvent() throws XMLStreamException {
        XMLEvent next = peek();
        if (next == null) {
            throw new NoSuchElementException();
        }
        return ready.remove();
    }

    @Override
    public Object next() {
        try {
            return nextEvent();
        } catch (XMLStreamException e) {
            throw new NoSuchElementException(e.getMessage(), e);
        }
    }

    private void take(XMLEvent event) {
        if (event.isStartElement()) {
            StartElement start = event.asStartElement();
            isStyle = start.getName().getLocalPart().equals("style");
            Double faded = facts.faded().get(elements);
            if (faded != null) {
                filter(start, elements, faded);
            }
            ready.add(changed(start, faded == null ? -1 : elements));
            elements++;
            return;
        }
        isStyle &= !event.isEndElement();
        if (event.isCharacters() && isStyle) {
            ready.add(EVENTS.createCharacters(
                    families(event.asCharacters().getData()).replace("rebeccapurple", "#663399")));
            return;
        }
        ready.add(event);
    }

    /** {@code <filter><feComponentTransfer><feFuncA type="linear" slope=".5"/></feComponentTransfer></filter>} */
    private void filter(StartElement like, int number, double opacity) {
        begin(
                like,
                "filter",
                List.of(
                        attribute("id", SvgScan.filterName(number)),
                        attribute("x", "-1"),
                        attribute("y", "-1"),
                        attribute("width", "3"),
                        attribute("height", "3"),
                        attribute("color-interpolation-filters", "sRGB")));
        begin(like, "feComponentTransfer", List.of());
        begin(
                like,
                "feFuncA",
                List.of(attribute("type", "linear"), attribute("slope", String.format(Locale.ROOT, "%.4f", opacity))));
        for (String name : List.of("feFuncA", "feComponentTransfer", "filter")) {
            QName full = named(like, name);
            ready.add(EVENTS.createEndElement(full, null));
        }
    }

    private void begin(StartElement like, String name, List<Attribute> attributes) {
        ready.add(EVENTS.createStartElement(named(like, name), attributes.iterator(), null));
    }

    private static QName named(StartElement like, String name) {
        return new QName(like.getName().getNamespaceURI(), name, like.getName().getPrefix());
    }

    private static Attribute attribute(String name, String value) {
        return EVENTS.createAttribute(name, value);
    }

    private StartElement changed(StartElement start, int faded) {
        List<Attribute> attributes = new ArrayList<>();
        for (Iterator<Attribute> all = start.getAttributes(); all.hasNext(); ) {
            Attribute attribute = all.next();
            String name = attribute.getName().getLocalPart();
            String value = attribute.getValue();
            if (faded >= 0 && name.equals("opacity")) {
                continue;
            }
            if (name.equals("font-family")) {
                value = SvgFonts.find(value).orElse(value);
            } else if (name.equals("style")) {
                value = families(value);
                value = faded < 0 ? value : value.replaceAll("(^|[;\\s])opacity\\s*:[^;]*;?", "$1");
            }
            value = value.replace("rebeccapurple", "#663399"); // of CSS Color 4, which the library doesn't know
            attributes.add(
                    value.equals(attribute.getValue())
                            ? attribute
                            : EVENTS.createAttribute(attribute.getName(), value));
        }
        if (faded >= 0) {
            attributes.add(attribute("filter", "url(#" + SvgScan.filterName(faded) + ")"));
        }
        return EVENTS.createStartElement(start.getName(), attributes.iterator(), start.getNamespaces());
    }

    private static String families(String css) {
        return SvgScan.FAMILY
                .matcher(css)
                .replaceAll(found -> Matcher.quoteReplacement(
                        "font-family:" + SvgFonts.find(found.group(1)).orElse(found.group(1))));
    }
}
