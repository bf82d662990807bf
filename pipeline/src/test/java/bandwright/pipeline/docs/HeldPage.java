package bandwright.pipeline.docs;

import static bandwright.pipeline.docs.Doc.say;

import bandwright.pipeline.held.Question;
import bandwright.pipeline.held.Reason;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** docs/held.md: every code with examples of its message and its cure. */
final class HeldPage {
    /** What stands in the places of a note's sentence. */
    private static final Map<String, List<Object>> NOTES = new LinkedHashMap<>();

    private static final Map<String, List<String>> SKIPPED = new LinkedHashMap<>();

    static {
        NOTES.put("ppi", List.of(150, "200", "1656 x 709"));
        NOTES.put("crop", List.of("21", "15"));
        NOTES.put("stretch", List.of("4", "3"));
        NOTES.put("tint", List.of("62", 250));
        NOTES.put("gamut", List.of("17.5", "desk"));
        NOTES.put(
                "limited",
                List.of(Words.say("size.limited.press"), Words.say("size.limited.height"), "120.65", "137.00"));
        NOTES.put("hairline", List.of("0.14", "0.25"));
        NOTES.put("text-cut", List.of("7.35"));
        NOTES.put("contrast", List.of("orange", "name", Words.say("size.ground.base", "pale blue"), "2.41", "3"));
        NOTES.put("colour", List.of(Words.say("size.ground.base", "pale blue"), "8.3", "5"));
        NOTES.put("stock", List.of("TUM-12-W", 2));
        NOTES.put("not-confirmed", List.of("ceramic", "mug press"));
        SKIPPED.put("cancelled", List.of(Words.say("intake.cancelled", "Refunded")));
        SKIPPED.put("not-drinkware", List.of(Words.say("intake.not-drinkware", 5)));
        SKIPPED.put(
                "already-made",
                List.of(
                        Words.say("skipped.already-made.run", "2026-03-02-1"),
                        Words.say("skipped.already-made.file", "web-shop.csv"),
                        Words.say("skipped.already-made.mended")));
    }

    private HeldPage() {}

    static String text() {
        Doc page = new Doc()
                .heading(1, say("held.title"))
                .paragraph(say("held.made"))
                .paragraph(say("held.how"))
                .heading(2, say("held.held"));
        byCode().forEach((code, reasons) -> held(page, code, reasons));
        page.heading(2, say("held.skipped"));
        SKIPPED.forEach((code, messages) -> page.heading(3, code)
                .paragraph(say("code." + code))
                .table(say("held.skip-example"), messages.stream().map(List::of).toList()));
        page.heading(2, say("held.notes"));
        NOTES.forEach((code, about) -> page.heading(3, code)
                .paragraph(say("code." + code))
                .table(say("held.note-example"), List.of(List.of(Words.say("note." + code, about.toArray())))));
        return page.text();
    }

    static List<String> noteCodes() {
        return List.copyOf(NOTES.keySet());
    }

    static List<String> skippedCodes() {
        return List.copyOf(SKIPPED.keySet());
    }

    static Map<String, List<Reason>> byCode() {
        return new ReasonExamples()
                .all().stream().collect(Collectors.groupingBy(Reason::code, LinkedHashMap::new, Collectors.toList()));
    }

    private static void held(Doc page, String code, List<Reason> reasons) {
        page.heading(3, code)
                .paragraph(say("code." + code) + " " + say("held.column", columns(code, reasons)))
                .table(
                        say(asksTheBuyer(reasons) ? "held.example-asked" : "held.example"),
                        reasons.stream().map(HeldPage::sentences).distinct().toList());
    }

    private static boolean asksTheBuyer(List<Reason> reasons) {
        return reasons.stream().anyMatch(reason -> reason.question().isPresent());
    }

    private static List<String> sentences(Reason reason) {
        List<String> all = new ArrayList<>(List.of(reason.message(), reason.cure()));
        reason.question().map(Question::needed).ifPresent(all::add);
        return all;
    }

    private static String columns(String code, List<Reason> reasons) {
        if (code.equals("changed-after-printing")) {
            return say("held.any-column");
        }
        List<String> all = new ArrayList<>();
        for (Reason reason : reasons) {
            String header = firstHeader(reason);
            if (!all.contains(header)) {
                all.add(header);
            }
        }
        return String.join(", ", all);
    }

    /** The first of the built-in headers that the field goes by. */
    private static String firstHeader(Reason reason) {
        return BuiltIn.rules().orderColumns().list().stream()
                .filter(column -> column.field().equals(reason.field()))
                .map(column -> column.header())
                .findFirst()
                .orElse(reason.field().name());
    }
}
