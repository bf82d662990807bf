package bandwright.pipeline.match.text;

import bandwright.pipeline.intake.Wording;
import bandwright.pipeline.match.text.Fields.Field;
import bandwright.pipeline.rows.FailedFormula;
import bandwright.rules.table.Names;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The texts that a row gives, by field, and what of its words is left over: nothing is ever dropped. "Ada, Ben" is two
 * texts for a site whose text_separator is a comma.
 */
final class Given {
    /** A line of its own that looks like a label and is none: "Colour: gold". */
    private static final Pattern OTHER_LABEL =
            Pattern.compile("(?:\n|;)[\\h]*(\\p{L}[^\n;:\uFF1A]{0,30}[:\uFF1A]\\h[^\n]*)");

    private final Wording wording;
    private final Fields takes;
    private final Map<String, List<String>> texts = new LinkedHashMap<>();
    private final List<String> left = new ArrayList<>();

    /** @param takes the fields of all designs of the row */
    Given(Wording wording, Fields takes, Labels labels) {
        this.wording = wording;
        this.takes = takes;
        wording.columns().forEach(this::column);
        if (!wording.personalisation().isEmpty()) {
            packed(Packed.parse(wording.personalisation(), labels));
        }
    }

    /** The texts for that field, in the order in which they came. */
    List<String> texts(Field field) {
        return texts.getOrDefault(Names.fold(field.name()), List.of());
    }

    /** What is not understood. */
    List<String> left() {
        return List.copyOf(left);
    }

    private void column(String field, String cell) {
        String text = Packed.typed(cell);
        if (isNothing(text)) {
            return;
        }
        if (takes.find(field).isPresent() && !FailedFormula.is(text)) {
            texts.put(Names.fold(field), split(text));
        } else {
            left.add(field + ": " + text);
        }
    }

    private void packed(Packed packed) {
        Map<String, List<String>> labelled = new LinkedHashMap<>();
        boolean isWhole = packed.parts().isEmpty() && takes.list().size() == 1;
        if (isWhole && !isNothing(packed.unlabelled()) && !FailedFormula.is(packed.unlabelled())) {
            labelled.put(Names.fold(takes.list().get(0).name()), new ArrayList<>(split(packed.unlabelled())));
        } else if (!isNothing(packed.unlabelled())) {
            left.add(packed.unlabelled());
        }
        for (Packed.Part part : packed.parts()) {
            if (isNothing(part.text())) {
                continue;
            }
            if (takes.find(part.field()).isEmpty() || FailedFormula.is(part.text())) {
                left.add(part.label() + ": " + part.text());
                continue;
            }
            Matcher other = OTHER_LABEL.matcher(part.text());
            if (other.find()) {
                left.add(other.group(1));
            }
            labelled.computeIfAbsent(Names.fold(part.field()), any -> new ArrayList<>())
                    .addAll(split(part.text()));
        }
        labelled.forEach(this::add);
    }

    /** The cell may say again what a column says, but nothing else. */
    private void add(String field, List<String> said) {
        List<String> known = texts.putIfAbsent(field, List.copyOf(said));
        if (known != null && !known.equals(said)) {
            left.add(field + ": " + String.join(", ", said));
        }
    }

    private List<String> split(String text) {
        String separator = wording.separator();
        if (separator.isEmpty()) {
            return List.of(text);
        }
        return Arrays.stream(parting(separator).split(text, -1))
                .map(Packed::trimmed)
                .filter(part -> !isNothing(part))
                .toList();
    }

    /** A word parts where it is a word: "and" stands in no "Sandy". A line break is written \n in the table. */
    private static Pattern parting(String separator) {
        if (separator.equals("\\n")) {
            return Pattern.compile("\n");
        }
        boolean isWord = separator.codePoints().allMatch(Character::isLetter);
        String quoted = Pattern.quote(separator);
        return Pattern.compile(
                isWord ? "(?<!\\p{L})" + quoted + "(?!\\p{L})" : quoted,
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    private boolean isNothing(String text) {
        return text.isEmpty() || wording.emptyWords().stream().anyMatch(word -> Names.same(word, text));
    }
}
