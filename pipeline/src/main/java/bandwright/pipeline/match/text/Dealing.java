package bandwright.pipeline.match.text;

import bandwright.pipeline.held.Outcome;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.intake.Wording;
import bandwright.pipeline.intake.listing.Item;
import bandwright.pipeline.match.text.Fields.Field;
import bandwright.rules.orders.OrderField;
import bandwright.rules.table.Names;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Deals one row's texts to its pieces and checks each: as many texts as pieces that take it go one to each, one to all. */
final class Dealing {
    private static final SortedMap<String, String> NONE = Collections.emptySortedMap();

    private final OrderLine line;
    private final List<Fields> ofItems;
    private final Fields all;
    private final Given given;
    /** How many texts of a field are dealt so far. */
    private final Map<String, Integer> dealt = new HashMap<>();

    Dealing(OrderLine line, List<Fields> ofItems, Fields all, Given given) {
        this.line = line;
        this.ofItems = ofItems;
        this.all = all;
        this.given = given;
    }

    Outcome<List<SortedMap<String, String>>> deal() {
        Optional<TextReason> unfit = leftOver().or(this::notDealt);
        if (unfit.isPresent()) {
            return Outcome.held(unfit.get());
        }
        List<SortedMap<String, String>> pieces = new ArrayList<>();
        for (int copy = 0; copy < line.quantity(); copy++) {
            for (int item = 0; item < ofItems.size(); item++) {
                for (int nth = 0; nth < line.items().get(item).count(); nth++) {
                    SortedMap<String, String> texts = texts(line.items().get(item), ofItems.get(item));
                    Optional<TextReason> wrong = wrong(texts, ofItems.get(item));
                    if (wrong.isPresent()) {
                        return Outcome.held(wrong.get());
                    }
                    pieces.add(texts);
                }
            }
        }
        return Outcome.made(pieces);
    }

    private Optional<TextReason> leftOver() {
        List<String> left = new ArrayList<>(given.left());
        for (int i = 0; i < ofItems.size(); i++) {
            Fields fields = ofItems.get(i);
            line.items().get(i).texts().forEach((field, text) -> {
                if (fields.find(field).isEmpty()) {
                    left.add(field + ": " + text);
                }
            });
        }
        if (left.isEmpty()) {
            return Optional.empty();
        }
        List<String> takes = all.list().stream().map(Field::name).toList();
        String designs = all.design().isEmpty()
                ? line.items().stream().map(Item::design).distinct().collect(Collectors.joining(", "))
                : all.design();
        OrderField cell = line.wording().personalisation().isEmpty()
                ? line.wording().columns().keySet().stream()
                        .filter(field -> all.find(field).isEmpty())
                        .findFirst()
                        .map(OrderField::text)
                        .orElse(OrderField.PERSONALISATION)
                : OrderField.PERSONALISATION;
        return Optional.of(
                new TextReason.PersonalisationUnread(cell, String.join(" / ", left), designs, takes, words()));
    }

    private Optional<TextReason> notDealt() {
        for (Field field : all.list()) {
            int texts = given.texts(field).size();
            int pieces = takers(field);
            if (texts > 1 && texts != pieces) {
                return Optional.of(new TextReason.TextsNotDealt(cell(field), field.name(), texts, pieces, words()));
            }
        }
        return Optional.empty();
    }

    /** How many of the row's pieces take it. */
    private int takers(Field field) {
        int inCopy = 0;
        for (int item = 0; item < ofItems.size(); item++) {
            if (ofItems.get(item).find(field.name()).isPresent()) {
                inCopy += line.items().get(item).count();
            }
        }
        return inCopy * line.quantity();
    }

    private SortedMap<String, String> texts(Item item, Fields fields) {
        if (fields.byName().isEmpty()) {
            return NONE;
        }
        SortedMap<String, String> texts = new TreeMap<>();
        for (Field field : fields.list()) {
            String text = text(item, field);
            if (!text.isEmpty()) {
                texts.put(field.name(), text);
            }
        }
        return texts;
    }

    /** The buyer's text goes before the listing's, and that before the design's own. */
    private String text(Item item, Field field) {
        List<String> texts = given.texts(field);
        if (!texts.isEmpty()) {
            int nth = dealt.merge(Names.fold(field.name()), 1, Integer::sum) - 1;
            return texts.get(texts.size() == 1 ? 0 : nth);
        }
        return item.texts().entrySet().stream()
                .filter(text -> Names.same(text.getKey(), field.name()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(field.defaultText());
    }

    private Optional<TextReason> wrong(SortedMap<String, String> texts, Fields fields) {
        for (Field field : fields.list()) {
            String text = Normalizer.normalize(texts.getOrDefault(field.name(), ""), Normalizer.Form.NFC);
            int length = text.codePointCount(0, text.length());
            if (length == 0 && field.isRequired()) {
                return Optional.of(new TextReason.TextMissing(cell(field), field.name(), fields.design(), words()));
            }
            if (field.maxChars().isPresent() && length > field.maxChars().getAsInt()) {
                return Optional.of(new TextReason.TextTooLong(
                        cell(field),
                        field.name(),
                        text,
                        length,
                        field.maxChars().getAsInt(),
                        words()));
            }
        }
        return Optional.empty();
    }

    /** The cell to mend: the field's own column where the sheet has one and the packed cell says nothing. */
    private OrderField cell(Field field) {
        OrderField own = line.row().header().fields().stream()
                .filter(each -> each.isText() && Names.same(each.textField(), field.name()))
                .findFirst()
                .orElse(OrderField.PERSONALISATION);
        return line.wording().personalisation().isEmpty() ? own : OrderField.PERSONALISATION;
    }

    /** All that the buyer wrote, as it came. */
    private String words() {
        Wording wording = line.wording();
        List<String> words = new ArrayList<>();
        if (!wording.personalisation().isEmpty()) {
            words.add(Packed.typed(wording.personalisation()));
        }
        wording.columns().forEach((field, text) -> words.add(field + ": " + Packed.typed(text)));
        return String.join("\n", words);
    }
}
