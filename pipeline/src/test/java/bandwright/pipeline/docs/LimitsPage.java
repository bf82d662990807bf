package bandwright.pipeline.docs;

import static bandwright.pipeline.docs.Doc.say;

import bandwright.pipeline.limits.Limits;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** docs/limits.md: every limit of what strangers send, with its value as the code has it. */
final class LimitsPage {
    private static final List<String> PICTURES = List.of(
            "ARTWORK_DEPTH",
            "PICTURE_BYTES",
            "PICTURE_PIXELS",
            "PICTURE_SIDE",
            "INTERLACED_BYTES",
            "DECODED_BYTES",
            "WEBP_PIXELS",
            "TIFF_STRETCHES",
            "PROFILE_BYTES");
    private static final List<String> ORDERS = List.of(
            "ORDER_FILE_BYTES",
            "UNPACKED_BYTES",
            "INBOX_MEMORY_BYTES",
            "SHEET_ROWS",
            "SHEET_COLUMNS",
            "BLANK_ROWS",
            "CELL_CHARACTERS",
            "SHEETS");

    private LimitsPage() {}

    static String text() {
        List<String> drawings = new ArrayList<>(constants());
        drawings.removeAll(ORDERS);
        drawings.removeAll(PICTURES);
        return new Doc()
                .heading(1, say("limits.title"))
                .paragraph(say("limits.made"))
                .paragraph(say("limits.how"))
                .heading(2, say("limits.orders"))
                .paragraph(say("limits.orders.beyond"))
                .table(say("limits.head"), rows(ORDERS))
                .heading(2, say("limits.pictures"))
                .paragraph(say("limits.pictures.beyond"))
                .table(say("limits.head"), rows(PICTURES))
                .heading(2, say("limits.drawings"))
                .paragraph(say("limits.drawings.beyond"))
                .table(say("limits.head"), rows(drawings))
                .heading(2, say("limits.shop"))
                .paragraph(say("limits.shop.how"))
                .text();
    }

    private static Set<String> constants() {
        Set<String> names = new LinkedHashSet<>();
        Stream.of(Limits.class.getFields()).map(Field::getName).sorted().forEach(names::add);
        return names;
    }

    private static List<List<String>> rows(List<String> names) {
        return names.stream()
                .map(name -> List.of(say("limit." + key(name)), value(name)))
                .toList();
    }

    private static String key(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static String value(String name) {
        try {
            Field field = Limits.class.getField(name);
            if (!Modifier.isStatic(field.getModifiers())) {
                throw new IllegalStateException(name);
            }
            long value = ((Number) field.get(null)).longValue();
            if (name.endsWith("_BYTES")) {
                return value % 1_000_000 == 0
                        ? say("limits.megabytes", grouped(value / 1_000_000))
                        : say("limits.megabytes", grouped(value >> 20));
            }
            if (name.endsWith("_PIXELS")) {
                return say("limits.megapixels", grouped(value / 1_000_000));
            }
            return name.endsWith("_SECONDS") ? say("limits.seconds", value) : grouped(value);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(name, e);
        }
    }

    private static String grouped(long value) {
        return String.format(Locale.ROOT, "%,d", value);
    }
}
