package bandwright.pipeline.sample.art;

import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The 256 colours that a flat picture uses most; rarer ones, shades of an edge, become the nearest of them. */
final class Palette {
    private final List<Integer> colours;
    private final Map<Integer, Integer> places = new HashMap<>();

    private Palette(List<Integer> colours) {
        this.colours = colours;
        for (int i = 0; i < colours.size(); i++) {
            places.put(colours.get(i), i);
        }
    }

    /** The picture with one byte a pixel. */
    static BufferedImage picture(BufferedImage full) {
        Palette palette = new Palette(mostUsed(full));
        IndexColorModel model = palette.model();
        BufferedImage small =
                new BufferedImage(full.getWidth(), full.getHeight(), BufferedImage.TYPE_BYTE_INDEXED, model);
        int[] pixels = pixels(full);
        byte[] places = new byte[pixels.length];
        for (int i = 0; i < pixels.length; i++) {
            boolean same = i > 0 && pixels[i] == pixels[i - 1];
            places[i] = same ? places[i - 1] : (byte) palette.place(pixels[i]);
        }
        small.getRaster().setDataElements(0, 0, full.getWidth(), full.getHeight(), places);
        return small;
    }

    private static List<Integer> mostUsed(BufferedImage full) {
        int[] sorted = pixels(full);
        Arrays.sort(sorted);
        Map<Integer, Integer> uses = new HashMap<>();
        int first = 0;
        for (int i = 1; i <= sorted.length; i++) {
            if (i == sorted.length || sorted[i] != sorted[first]) {
                uses.put(sorted[first], i - first);
                first = i;
            }
        }
        return uses.keySet().stream()
                .sorted(Comparator.comparing((Integer colour) -> -uses.getOrDefault(colour, 0))
                        .thenComparing(colour -> colour))
                .limit(256)
                .toList();
    }

    private static int[] pixels(BufferedImage full) {
        return full.getRGB(0, 0, full.getWidth(), full.getHeight(), null, 0, full.getWidth());
    }

    private IndexColorModel model() {
        int[] rgb = colours.stream().mapToInt(Integer::intValue).toArray();
        return new IndexColorModel(8, rgb.length, rgb, 0, false, -1, DataBuffer.TYPE_BYTE);
    }

    private int place(int colour) {
        return places.computeIfAbsent(colour, this::nearest);
    }

    private int nearest(int colour) {
        int best = 0;
        for (int i = 1; i < colours.size(); i++) {
            if (distance(colour, colours.get(i)) < distance(colour, colours.get(best))) {
                best = i;
            }
        }
        return best;
    }

    private static int distance(int one, int other) {
        int sum = 0;
        for (int shift = 0; shift < 24; shift += 8) {
            int apart = (one >> shift & 255) - (other >> shift & 255);
            sum += apart * apart;
        }
        return sum;
    }
}
