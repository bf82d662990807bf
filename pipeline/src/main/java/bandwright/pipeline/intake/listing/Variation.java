package bandwright.pipeline.intake.listing;

import bandwright.rules.table.Names;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the buyer chose of a listing: {@code Size: 15 oz / Handle: Pink} is Size=15 oz and Handle=Pink. Pairs are parted
 * by " / ", a comma, a semicolon or a line break. A part without a key may be the rest of the value before it, as in
 * {@code Colours: black, white}: the value counts with it and without.
 */
final class Variation {
    private static final Pattern PARTING = Pattern.compile(" / |[,;]|\\R");
    private static final Pattern SIGN = Pattern.compile("[:=]");

    private final Map<String, Set<String>> values = new HashMap<>();
    private final Map<String, String> pairs = new LinkedHashMap<>();

    private Variation() {}

    static Variation parse(String cell) {
        Variation variation = new Variation();
        String key = "";
        StringBuilder value = new StringBuilder();
        int end = 0;
        for (int[] part : parts(cell)) {
            String text = cell.substring(part[0], part[1]);
            Matcher sign = SIGN.matcher(text);
            if (sign.find() && !text.substring(0, sign.start()).isBlank()) {
                key = text.substring(0, sign.start()).strip();
                value = new StringBuilder(text.substring(sign.end()));
                variation.pairs.putIfAbsent(key, value.toString().strip());
            } else if (!key.isEmpty()) {
                value.append(cell, end, part[1]);
            }
            end = part[1];
            if (!key.isEmpty()) {
                variation
                        .values
                        .computeIfAbsent(Names.fold(key), any -> new HashSet<>())
                        .add(Names.fold(value.toString()));
            }
        }
        return variation;
    }

    private static List<int[]> parts(String cell) {
        List<int[]> parts = new ArrayList<>();
        Matcher parting = PARTING.matcher(cell);
        int start = 0;
        while (parting.find()) {
            parts.add(new int[] {start, parting.start()});
            start = parting.end();
        }
        parts.add(new int[] {start, cell.length()});
        return parts;
    }

    boolean has(String key, String value) {
        return values.getOrDefault(Names.fold(key), Set.of()).contains(Names.fold(value));
    }

    /** The pairs as products.csv writes them: Size=15 oz|Handle=Pink. */
    String asPairs() {
        List<String> written = new ArrayList<>();
        pairs.forEach((key, value) -> {
            if (!key.contains("|") && !key.contains("=") && !value.contains("|")) {
                written.add(key + "=" + value);
            }
        });
        return String.join("|", written);
    }
}
