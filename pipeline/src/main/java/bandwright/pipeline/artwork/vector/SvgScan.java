package bandwright.pipeline.artwork.vector;

import bandwright.pipeline.artwork.Flaw;
import bandwright.pipeline.artwork.RefusedPicture;
import bandwright.pipeline.limits.Limits;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads an SVG once before it is drawn: whether it keeps the limits, refers to nothing outside itself, and sets letters
 * in bundled fonts only; and which of its parts are faded as a whole.
 */
final class SvgScan {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final Set<String> SHAPES =
            Set.of("path", "rect", "circle", "ellipse", "line", "polyline", "polygon", "text");
    /** What the library passes over, though it paints something. */
    private static final Set<String> UNDRAWN = Set.of("foreignObject", "switch");

    private static final Set<String> WHOLES = Set.of("g", "svg", "use", "a");
    private static final Pattern OUTSIDE =
            Pattern.compile("url\\(\\s*['\"]?\\s*(?!['\"#\\s])", Pattern.CASE_INSENSITIVE);
    /** A blur of a thousand units or more spreads over pictures far larger than any artwork. [J] */
    private static final Pattern FAR = Pattern.compile("\\d{4}|[eE]\\+?[1-9]");

    private static final Pattern INSIDE = Pattern.compile("url\\(\\s*['\"]?#([^'\")\\s]+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern FONT_FACE = Pattern.compile("@font-face\\s*\\{[^}]*}", Pattern.CASE_INSENSITIVE);
    private static final Pattern BLENDED =
            Pattern.compile("mix-blend-mode\\s*:\\s*(?!normal)", Pattern.CASE_INSENSITIVE);
    private static final Pattern SHORTHAND = Pattern.compile("(?:^|[;{\\s])font\\s*:", Pattern.CASE_INSENSITIVE);
    private static final Pattern STROKED = Pattern.compile("(?:^|[;\\s])stroke\\s*:\\s*(?!none)");
    private static final Pattern UNFILLED = Pattern.compile("(?:^|[;\\s])fill\\s*:\\s*none");
    private static final Pattern FILTERED = Pattern.compile("(?:^|[;\\s])(?:filter|mask)\\s*:");
    private static final Pattern OPACITY = Pattern.compile("(?:^|[;\\s])opacity\\s*:\\s*([0-9.eE+-]+)(%?)");
    static final Pattern FAMILY = Pattern.compile("font-family\\s*:\\s*([^;}]*)", Pattern.CASE_INSENSITIVE);

    private final Deque<Open> open = new ArrayDeque<>();
    private final Map<Integer, Double> faded = new HashMap<>();
    private final Set<String> families = new TreeSet<>();
    private final StringBuilder letters = new StringBuilder();
    private final SvgPictures pictures = new SvgPictures();
    private final SvgWork work = new SvgWork();
    private boolean hasText;
    private boolean hasStyles;
    private boolean hasUnknownFont;
    private int elements;
    private int filters;

    /** What was found: the elements, counted from 0, that are faded as a whole, and how much shows of them. */
    record Facts(Map<Integer, Double> faded, boolean hasText) {
        Facts {
            faded = Map.copyOf(faded);
        }
    }

    /** An element that has not ended yet. */
    private static final class Open {
        final int number;
        final String name;
        final double opacity;
        final boolean isStroked;
        final boolean isFilled;
        final boolean isFiltered;
        int painted;

        Open(int number, String name, double opacity, boolean isStroked, boolean isFilled, boolean isFiltered) {
            this.isFilled = isFilled;
            this.number = number;
            this.name = name;
            this.opacity = opacity;
            this.isStroked = isStroked;
            this.isFiltered = isFiltered;
        }
    }

    private SvgScan() {}

    static Facts of(byte[] svg) throws RefusedPicture {
        SvgScan scan = new SvgScan();
        try {
            XMLStreamReader reader = SvgFile.parsers().createXMLStreamReader(SvgFile.text(svg));
            while (reader.hasNext()) {
                scan.take(reader, reader.next());
            }
        } catch (XMLStreamException e) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        scan.work.requireLittle();
        scan.requireLetters();
        return new Facts(scan.faded, scan.hasText);
    }

    private void take(XMLStreamReader reader, int event) throws RefusedPicture {
        switch (event) {
            case XMLStreamConstants.START_ELEMENT -> start(reader);
            case XMLStreamConstants.END_ELEMENT -> end();
            case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> text(reader.getText());
            case XMLStreamConstants.PROCESSING_INSTRUCTION ->
                require(!reader.getPITarget().equals("xml-stylesheet"), Flaw.LINKS);
            case XMLStreamConstants.ENTITY_REFERENCE -> throw new RefusedPicture(Flaw.ENTITIES);
            default -> {
                // comments and what else paints nothing
            }
        }
    }

    private static void require(boolean isSound, Flaw otherwise) throws RefusedPicture {
        if (!isSound) {
            throw new RefusedPicture(otherwise);
        }
    }

    private void start(XMLStreamReader reader) throws RefusedPicture {
        String space = reader.getNamespaceURI();
        String name = space == null || space.isEmpty() || space.equals(SVG) ? reader.getLocalName() : "";
        require(!open.isEmpty() || name.equals("svg"), Flaw.UNKNOWN_KIND);
        require(++elements <= Limits.SVG_ELEMENTS && open.size() < Limits.SVG_DEPTH, Flaw.TOO_COMPLEX);
        require(!UNDRAWN.contains(name), Flaw.BLENDING);
        hasText |= name.equals("text");
        hasStyles |= name.equals("style");
        Open parent = open.peek();
        work.begin(reader.getAttributeValue(null, "id"));
        double opacity = 1;
        boolean isStroked = hasStyles || (parent != null && parent.isStroked);
        // The library takes a marker for as large as it says, whatever the line's width.
        boolean isScaled = name.equals("marker") && reader.getAttributeValue(null, "viewBox") == null;
        require(!isScaled || "userSpaceOnUse".equals(reader.getAttributeValue(null, "markerUnits")), Flaw.BLENDING);
        boolean isFilled = !name.equals("line") && (parent == null || parent.isFilled);
        boolean isFiltered = false;
        for (int i = 0; i < reader.getAttributeCount() && !name.isEmpty(); i++) {
            String key = reader.getAttributeLocalName(i);
            String value = reader.getAttributeValue(i);
            attribute(name, key, value);
            String style = key.equals("style") ? value : key + ":" + value;
            opacity = opacity(style, opacity);
            isStroked |= STROKED.matcher(style).find();
            isFilled &= !UNFILLED.matcher(style).find();
            isFiltered |= FILTERED.matcher(style).find();
        }
        if (isFiltered) {
            work.filter();
        }
        require(!name.startsWith("fe") || ++filters <= Limits.SVG_FILTERS, Flaw.TOO_COMPLEX);
        open.push(new Open(elements - 1, name, opacity, isStroked, isFilled, isFiltered));
    }

    private void attribute(String element, String key, String value) throws RefusedPicture {
        if (key.equals("href") && !element.equals("a") && !element.equals("script")) {
            boolean isInside = value.strip().startsWith("#");
            require(isInside || element.equals("image"), Flaw.LINKS);
            if (isInside) {
                work.refer(value.strip().substring(1));
            } else {
                pictures.take(value.strip());
            }
            return;
        }
        require(!key.equals("stdDeviation") || !FAR.matcher(value).find(), Flaw.TOO_COMPLEX);
        style(key.equals("style") ? value : key + ":" + value);
    }

    private void style(String css) throws RefusedPicture {
        String plain = FONT_FACE.matcher(css).replaceAll("");
        require(!OUTSIDE.matcher(plain).find() && !plain.contains("@import"), Flaw.LINKS);
        require(!BLENDED.matcher(plain).find(), Flaw.BLENDING);
        INSIDE.matcher(plain).results().forEach(found -> work.refer(found.group(1)));
        hasUnknownFont |= SHORTHAND.matcher(plain).find();
        Matcher family = FAMILY.matcher(plain);
        while (family.find()) {
            SvgFonts.find(family.group(1)).ifPresentOrElse(families::add, () -> hasUnknownFont = true);
        }
    }

    private static double opacity(String style, double otherwise) {
        Matcher found = OPACITY.matcher(style);
        if (!found.find()) {
            return otherwise;
        }
        try {
            double share = Double.parseDouble(found.group(1)) / (found.group(2).isEmpty() ? 1 : 100);
            return Math.max(0, Math.min(1, share));
        } catch (NumberFormatException e) {
            return otherwise;
        }
    }

    private void end() {
        work.end();
        Open ended = open.pop();
        if (SHAPES.contains(ended.name)) {
            ended.painted += ended.isStroked && ended.isFilled ? 2 : 1;
        } else if (ended.name.equals("use")) {
            ended.painted += 2;
        } else if (ended.name.equals("image")) {
            ended.painted++;
        }
        boolean canFade = SHAPES.contains(ended.name) || WHOLES.contains(ended.name);
        if (canFade && ended.painted > 1 && ended.opacity < 1 && !ended.isFiltered) {
            faded.put(ended.number, ended.opacity);
        }
        Open parent = open.peek();
        if (parent != null) {
            parent.painted += ended.painted;
        }
    }

    private void text(String text) throws RefusedPicture {
        if (open.isEmpty()) {
            return;
        }
        if (open.peek().name.equals("style")) {
            style(text);
        } else if (open.stream().anyMatch(element -> element.name.equals("text"))) {
            letters.append(text);
        }
    }

    private void requireLetters() throws RefusedPicture {
        if (!hasText) {
            return;
        }
        require(!hasUnknownFont, Flaw.LETTERS);
        String text = letters.toString().replaceAll("\\s+", "");
        families.add(SvgFonts.USUAL);
        for (String family : families) {
            require(SvgFonts.sets(family, text), Flaw.LETTERS);
        }
    }

    /** The number of an element's filter as its name is written. */
    static String filterName(int number) {
        return String.format(Locale.ROOT, "bandwright-faded-%d", number);
    }
}
