package bandwright.pipeline.artwork.vector;

import bandwright.pipeline.artwork.Flaw;
import bandwright.pipeline.artwork.RefusedPicture;
import bandwright.pipeline.limits.Limits;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;

/**
 * Walks through all that a page is made of: takes out what does something or tells something (actions, scripts, private
 * data), and refuses fonts that the file doesn't bring and streams that lie in other files.
 */
final class PdfParts {
    private static final List<COSName> STRIPPED = Stream.of(
                    "AA",
                    "A",
                    "JS",
                    "PieceInfo",
                    "Metadata",
                    "LastModified",
                    "AF",
                    "OPI",
                    "Ref",
                    "Annots",
                    "B",
                    "StructParent",
                    "StructParents",
                    "Thumb",
                    "PZ",
                    "Tabs",
                    "Alternates")
            .map(COSName::getPDFName)
            .toList();

    private static final List<COSName> FONT_FILES = List.of(COSName.FONT_FILE, COSName.FONT_FILE2, COSName.FONT_FILE3);

    /** Packings whose gain can be told beforehand, and those of pictures, which carry their own size. */
    private static final Set<String> PACKINGS = Set.of(
            "FlateDecode",
            "Fl",
            "DCTDecode",
            "DCT",
            "CCITTFaxDecode",
            "CCF",
            "JBIG2Decode",
            "JPXDecode",
            "ASCIIHexDecode",
            "AHx",
            "ASCII85Decode",
            "A85",
            "RunLengthDecode",
            "RL",
            "LZWDecode",
            "LZW");

    /** An LZW code of 9 to 12 bits stands for 4,096 bytes at most. */
    private static final int LZW_GAIN = 4096;

    private final Set<COSBase> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Deque<COSBase> ahead = new ArrayDeque<>();
    private long pixels;
    private long unpacked;

    private PdfParts() {}

    /** @param page without its way back to the page tree */
    static void clean(COSDictionary page) throws RefusedPicture {
        PdfParts parts = new PdfParts();
        parts.ahead.push(page);
        while (!parts.ahead.isEmpty()) {
            parts.take(parts.ahead.pop());
        }
    }

    private void take(COSBase part) throws RefusedPicture {
        COSBase direct = part instanceof COSObject reference ? reference.getObject() : part;
        if (direct == null || !(direct instanceof COSDictionary || direct instanceof COSArray) || !seen.add(direct)) {
            return;
        }
        if (seen.size() > Limits.PDF_PARTS) {
            throw new RefusedPicture(Flaw.TOO_COMPLEX);
        }
        if (direct instanceof COSArray array) {
            array.forEach(this::later);
            return;
        }
        COSDictionary dictionary = (COSDictionary) direct;
        strip(dictionary);
        requireFont(dictionary);
        if (dictionary instanceof COSStream stream) {
            requireStream(stream);
        }
        dictionary.getValues().forEach(this::later);
    }

    private void later(COSBase part) {
        if (part instanceof COSObject || part instanceof COSDictionary || part instanceof COSArray) {
            ahead.push(part);
        }
    }

    /** Names of a resource dictionary are anybody's; only what says what it is can hold such things. */
    private static void strip(COSDictionary dictionary) {
        boolean isTyped = dictionary.containsKey(COSName.TYPE) || dictionary.containsKey(COSName.SUBTYPE);
        if (isTyped) {
            STRIPPED.forEach(dictionary::removeItem);
        }
    }

    private static void requireFont(COSDictionary dictionary) throws RefusedPicture {
        if (!COSName.FONT.equals(dictionary.getCOSName(COSName.TYPE))) {
            return;
        }
        COSName kind = dictionary.getCOSName(COSName.SUBTYPE);
        if (COSName.TYPE3.equals(kind) || COSName.TYPE0.equals(kind)) {
            return; // drawn by its own streams; the other's descendant is a font, too
        }
        COSDictionary descriptor = dictionary.getCOSDictionary(COSName.FONT_DESC);
        if (descriptor == null || FONT_FILES.stream().noneMatch(descriptor::containsKey)) {
            throw new RefusedPicture(Flaw.FONTS);
        }
    }

    private void requireStream(COSStream stream) throws RefusedPicture {
        if (stream.containsKey(COSName.F)) {
            throw new RefusedPicture(Flaw.LINKS);
        }
        COSBase filters = stream.getFilters();
        int packings = 0;
        for (COSName filter : names(filters)) {
            boolean isPacking =
                    filter.getName().startsWith("Fl") || filter.getName().startsWith("LZW");
            packings += isPacking ? 1 : 0;
            if (filter.getName().startsWith("LZW")) {
                unpacked += stream.getLength() * LZW_GAIN;
            }
            if (!PACKINGS.contains(filter.getName()) || packings > 1 || unpacked > Limits.UNPACKED_BYTES) {
                throw new RefusedPicture(Flaw.TOO_COMPLEX);
            }
        }
        if (COSName.IMAGE.equals(stream.getCOSName(COSName.SUBTYPE))) {
            pixels += Math.max(0L, stream.getInt(COSName.WIDTH)) * Math.max(0L, stream.getInt(COSName.HEIGHT));
            if (pixels > Limits.INNER_PIXELS) {
                throw new RefusedPicture(Flaw.TOO_MANY_PIXELS);
            }
        }
    }

    private static List<COSName> names(COSBase filters) {
        if (filters instanceof COSName name) {
            return List.of(name);
        }
        return filters instanceof COSArray array
                ? array.toList().stream()
                        .filter(COSName.class::isInstance)
                        .map(COSName.class::cast)
                        .toList()
                : List.of();
    }
}
