package bandwright.pipeline.docs;

import static bandwright.pipeline.docs.Doc.say;

import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import bandwright.rules.Shop;
import bandwright.rules.table.Word;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The keys of shop.csv with the values that a shop gets which writes down none. */
record ShopValues(Shop builtIn) {
    private static final Set<String> SHARES =
            Set.of("stretch_note", "stretch_hold", "crop_note", "crop_hold", "spoil_rate");

    static ShopValues read() {
        try {
            Path folder = Files.createTempDirectory("shop");
            Path table = Files.writeString(folder.resolve("shop.csv"), "key,value\n");
            Shop shop = Rulebook.read(Optional.of(folder)).shop();
            Files.delete(table);
            Files.delete(folder);
            return new ShopValues(shop);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (RulebookFaults e) {
            throw new IllegalStateException(e);
        }
    }

    static List<String> keys() {
        return Arrays.stream(Shop.class.getRecordComponents())
                .map(ShopValues::key)
                .toList();
    }

    /** The record's timeZone is the table's time_zone, its papers the table's paper. */
    private static String key(RecordComponent component) {
        String name = component.getName();
        return name.equals("papers")
                ? "paper"
                : name.replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
    }

    List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        for (RecordComponent component : Shop.class.getRecordComponents()) {
            String key = key(component);
            rows.add(List.of("`" + key + "`", value(key, component), say("key." + key)));
        }
        return rows;
    }

    private String value(String key, RecordComponent component) {
        if (key.equals("paper") || key.equals("printer")) {
            return say("value.first", key + "s.csv");
        }
        try {
            return said(key, component.getAccessor().invoke(builtIn));
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String said(String key, Object value) {
        if (value instanceof Length length) {
            return plain(length.mm()) + " mm";
        }
        if (value instanceof Double number) {
            return SHARES.contains(key) ? plain(number * 100) + " %" : plain(number);
        }
        if (value instanceof Boolean is) {
            return say(is ? "value.yes" : "value.no");
        }
        if (value instanceof Word word) {
            return word.word();
        }
        if (value instanceof LengthUnit unit) {
            return unit.word();
        }
        if (value instanceof Optional<?> zone) {
            boolean isComputers = zone.isEmpty() && key.equals("time_zone");
            return isComputers
                    ? say("value.computer")
                    : zone.map(Object::toString).orElse(say("value.none"));
        }
        return value.toString().isEmpty() || value.equals(List.of()) ? say("value.none") : value.toString();
    }

    private static String plain(double number) {
        return new BigDecimal(String.format(Locale.ROOT, "%.4f", number))
                .stripTrailingZeros()
                .toPlainString();
    }
}
