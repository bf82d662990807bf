package bandwright.rules.colour;

import bandwright.rules.units.Rgb;
import bandwright.rules.words.Words;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A colour in plain words: #F5B6C8 is pink. The nearest of some thirty colours, by CIEDE2000, of our own choosing; nothing
 * is decided by it.
 */
public final class ColourName {
    private static final Map<String, Lab> COLOURS = new LinkedHashMap<>();

    static {
        put("white", 255, 255, 255);
        put("light-grey", 211, 211, 213);
        put("grey", 128, 128, 130);
        put("dark-grey", 64, 64, 66);
        put("black", 8, 8, 10);
        put("red", 208, 32, 32);
        put("dark-red", 120, 20, 24);
        put("pink", 245, 182, 200);
        put("bright-pink", 232, 62, 140);
        put("orange", 242, 130, 36);
        put("brown", 122, 74, 36);
        put("dark-brown", 62, 38, 22);
        put("beige", 217, 196, 160);
        put("cream", 248, 240, 220);
        put("yellow", 255, 221, 0);
        put("pale-yellow", 255, 246, 170);
        put("olive", 122, 122, 34);
        put("lime", 168, 216, 32);
        put("green", 46, 158, 62);
        put("dark-green", 20, 80, 42);
        put("pale-green", 190, 227, 192);
        put("turquoise", 48, 184, 176);
        put("pale-blue", 191, 216, 230);
        put("sky-blue", 90, 168, 224);
        put("blue", 32, 80, 200);
        put("dark-blue", 20, 34, 90);
        put("grey-blue", 96, 120, 144);
        put("pale-violet", 205, 187, 230);
        put("violet", 122, 63, 176);
        put("dark-violet", 64, 24, 88);
        put("magenta", 206, 32, 160);
    }

    private ColourName() {}

    private static void put(String name, int red, int green, int blue) {
        COLOURS.put(name, Lab.of(new Rgb(red, green, blue)));
    }

    public static String of(Rgb colour) {
        Lab lab = Lab.of(colour);
        String nearest = "";
        double least = Double.POSITIVE_INFINITY;
        for (Map.Entry<String, Lab> named : COLOURS.entrySet()) {
            double difference = ColourDifference.of(lab, named.getValue());
            if (difference < least) {
                least = difference;
                nearest = named.getKey();
            }
        }
        return Words.say("colour.name." + nearest);
    }
}
