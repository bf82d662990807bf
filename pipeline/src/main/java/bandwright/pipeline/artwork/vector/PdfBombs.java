package bandwright.pipeline.artwork.vector;

import bandwright.pipeline.artwork.Flaw;
import bandwright.pipeline.artwork.RefusedPicture;
import bandwright.pipeline.limits.Limits;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * Finds out how much a PDF unpacks to before anything unpacks it: every place where a stream begins (ISO 32000-1, 7.3.8)
 * is tried as deflated data, whatever its dictionary says.
 */
final class PdfBombs {
    private static final Pattern STREAM = Pattern.compile("stream\r?\n");
    private static final Pattern PACKING = Pattern.compile("/(?:FlateDecode|Fl|LZWDecode|LZW)(?![A-Za-z])");

    /** How far back a stream's dictionary is looked at. */
    private static final int DICTIONARY = 2_000;

    private long unpacked;

    private PdfBombs() {}

    static void require(byte[] pdf) throws RefusedPicture {
        PdfBombs bombs = new PdfBombs();
        String text = new String(pdf, StandardCharsets.ISO_8859_1);
        Matcher stream = STREAM.matcher(text);
        while (stream.find()) {
            if (text.startsWith("end", Math.max(0, stream.start() - 3))) {
                continue;
            }
            requireOnePacking(text, stream.start());
            bombs.add(pdf, stream.end());
        }
    }

    /** Packed twice, a few bytes become millions of millions; no honest program does that. */
    private static void requireOnePacking(String text, int end) throws RefusedPicture {
        String before = text.substring(Math.max(0, end - DICTIONARY), end);
        String dictionary = before.substring(Math.max(0, before.lastIndexOf(" obj")));
        Matcher packing = PACKING.matcher(dictionary);
        int count = 0;
        while (packing.find()) {
            count++;
        }
        if (count > 1) {
            throw new RefusedPicture(Flaw.TOO_COMPLEX);
        }
    }

    private void add(byte[] pdf, int at) throws RefusedPicture {
        Inflater inflater = new Inflater();
        byte[] out = new byte[1 << 16];
        try {
            inflater.setInput(pdf, at, pdf.length - at);
            int some = inflater.inflate(out);
            while (some > 0) {
                unpacked += some;
                if (unpacked > Limits.UNPACKED_BYTES) {
                    throw new RefusedPicture(Flaw.TOO_COMPLEX);
                }
                some = inflater.inflate(out);
            }
        } catch (DataFormatException e) {
            // not deflated, or damaged: it is as long as it is
        } finally {
            inflater.end();
        }
    }
}
