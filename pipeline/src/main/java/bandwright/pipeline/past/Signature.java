package bandwright.pipeline.past;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.SortedMap;

/**
 * What makes two pieces of one order the same thing: blank, design and texts as ordered, whatever file says so. Kept as
 * a digest, so that it outlasts the buyer's words.
 *
 * @param digest SHA-256 in hexadecimal digits
 */
public record Signature(String digest) {
    /** Of a piece. */
    public static Signature of(String sku, String design, SortedMap<String, String> texts) {
        return new Signature(digest(List.of(sku, design, texts.toString())));
    }

    /** A digest of words, each parted from the next. */
    public static String digest(List<String> words) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (String word : words) {
                byte[] bytes = word.getBytes(StandardCharsets.UTF_8);
                digest.update((bytes.length + ":").getBytes(StandardCharsets.US_ASCII));
                digest.update(bytes);
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e); // every Java has it
        }
    }
}
