package bandwright.pipeline.approve;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.size.Layer;
import bandwright.pipeline.size.Transfer;
import bandwright.pipeline.size.Unit;
import bandwright.rules.blanks.Blank;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.List;
import java.util.Locale;

/**
 * A short name for how the pieces of a row will look: 4KX7Q. It changes whenever anything visible does, be it a letter of
 * a name, the picture's file, its place or the colour of the blank; one chance in thirty-three million that it doesn't.
 *
 * @param text five of the ten digits and the letters that nobody takes for one of them
 */
public record ProofCode(String text) {
    private static final String SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private static final int LENGTH = 5;
    private static final int BITS = 5;

    /** Steps of a curve are rounded to that part of a millimetre: nobody sees less. */
    private static final double STEPS_A_MM = 20;

    /**
     * The code of a row.
     *
     * @param row its pieces
     */
    public static ProofCode of(List<Unit> row) {
        MessageDigest digest = sha256();
        for (Unit unit : row) {
            add(digest, unit.matched().blank());
            add(digest, unit.band().toString());
            add(digest, unit.transfer());
        }
        return new ProofCode(written(digest.digest()));
    }

    /** Whether somebody who typed that means this code: small letters do, and so do the letters O, I and L for digits. */
    boolean isMeantBy(String typed) {
        String plain = typed.strip()
                .toUpperCase(Locale.ROOT)
                .replace('O', '0')
                .replace('I', '1')
                .replace('L', '1');
        return plain.equals(text);
    }

    private static void add(MessageDigest digest, Blank blank) {
        add(digest, blank.form().toString());
        add(digest, blank.handleWidth().toString());
        add(digest, blank.baseColour().toString());
        add(digest, blank.hotColour().toString());
        add(digest, blank.handleColour().toString());
        add(digest, blank.insideColour().toString());
        add(digest, blank.finish().toString());
        add(digest, blank.backing().toString());
    }

    private static void add(MessageDigest digest, Transfer transfer) {
        for (Layer layer : transfer.layers()) {
            add(digest, layer.shown().toString());
            if (layer instanceof Layer.Picture picture) {
                add(digest, picture.place().toString());
                add(digest, picture.artwork());
            } else if (layer instanceof Layer.Fill fill) {
                add(digest, fill.colour().toString());
            } else if (layer instanceof Layer.Type type) {
                add(digest, type.colour().toString());
                add(digest, type.outline().path().getPathIterator(null));
            }
        }
    }

    private static void add(MessageDigest digest, PathIterator path) {
        double[] points = new double[6];
        StringBuilder steps = new StringBuilder();
        for (; !path.isDone(); path.next()) {
            steps.append(path.currentSegment(points));
            for (double point : points) {
                steps.append(' ').append(Math.round(point * STEPS_A_MM));
            }
        }
        add(digest, steps.toString());
    }

    private static void add(MessageDigest digest, ArtworkFile artwork) {
        add(digest, artwork.orientation().toString());
        try (InputStream in = Files.newInputStream(artwork.path())) {
            byte[] some = new byte[1 << 16];
            for (int count = in.read(some); count > 0; count = in.read(some)) {
                digest.update(some, 0, count);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void add(MessageDigest digest, String text) {
        digest.update(text.getBytes(StandardCharsets.UTF_8));
        digest.update((byte) 0);
    }

    private static String written(byte[] hash) {
        long bits = 0;
        for (int i = 0; i < 4; i++) {
            bits = (bits << 8) | (hash[i] & 0xFF);
        }
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) {
            text.append(SIGNS.charAt((int) (bits >> (BITS * i)) & (SIGNS.length() - 1)));
        }
        return text.toString();
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
