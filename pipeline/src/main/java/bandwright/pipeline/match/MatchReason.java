package bandwright.pipeline.match;

import bandwright.pipeline.artwork.Flaw;
import bandwright.pipeline.held.Reason;
import bandwright.rules.blanks.Blank;
import bandwright.rules.heat.HeatChoice.Refusal;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.orders.OrderField;
import bandwright.rules.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Every way that match can hold a row: a name that the rulebook or the artwork folder does not know, or a refused heat source. */
public sealed interface MatchReason extends Reason {

    /** The sku cell is empty, or names no blank. */
    record BlankUnknown(String asked, Optional<String> nearest) implements MatchReason {
        @Override
        public String code() {
            return "blank-unknown";
        }

        @Override
        public OrderField field() {
            return OrderField.SKU;
        }

        @Override
        public String message() {
            return Quoted.isNothing(asked)
                    ? Words.say("held.blank-unknown.empty")
                    : Words.say("held.blank-unknown.message", Quoted.of(asked));
        }

        @Override
        public String cure() {
            return Quoted.cure(nearest, "held.blank-unknown.cure");
        }
    }

    /** The design cell is empty, or names neither a design nor a file of the artwork folder. */
    record DesignUnknown(String asked, Optional<String> nearest) implements MatchReason {
        @Override
        public String code() {
            return "design-unknown";
        }

        @Override
        public OrderField field() {
            return OrderField.DESIGN;
        }

        @Override
        public String message() {
            return Quoted.isNothing(asked)
                    ? Words.say("held.design-unknown.empty")
                    : Words.say("held.design-unknown.message", Quoted.of(asked));
        }

        @Override
        public String cure() {
            return Quoted.cure(nearest, "held.design-unknown.cure");
        }
    }

    /** The design is known, but its picture is not in the artwork folder. */
    record ArtworkMissing(String design, String asked, Optional<String> nearest) implements MatchReason {
        @Override
        public String code() {
            return "artwork-missing";
        }

        @Override
        public OrderField field() {
            return OrderField.DESIGN;
        }

        @Override
        public String message() {
            return Words.say("held.artwork-missing.message", Quoted.of(asked), Quoted.of(design));
        }

        @Override
        public String cure() {
            return nearest.map(name -> Words.say("held.artwork-missing.near", Quoted.of(name)))
                    .orElseGet(() -> Words.say("held.artwork-missing.cure", Quoted.of(asked)));
        }
    }

    /** The picture is there, but can't be used; the shelf says why and what to do. */
    record ArtworkUnreadable(String picture, Flaw flaw) implements MatchReason {
        @Override
        public String code() {
            return "artwork-unreadable";
        }

        @Override
        public OrderField field() {
            return OrderField.DESIGN;
        }

        @Override
        public String message() {
            return Words.say("held.artwork-unreadable.message", Quoted.of(picture), flaw.message());
        }

        @Override
        public String cure() {
            return flaw.cure();
        }
    }

    /** The row wishes for a heat source that the shop does not have. */
    record HeatSourceUnknown(String asked, Optional<String> nearest, List<String> known) implements MatchReason {
        public HeatSourceUnknown {
            known = List.copyOf(known);
        }

        @Override
        public String code() {
            return "heat-source-refused";
        }

        @Override
        public OrderField field() {
            return OrderField.HEAT_SOURCE;
        }

        @Override
        public String message() {
            return Words.say("held.heat-source-refused.unknown", Quoted.of(asked));
        }

        @Override
        public String cure() {
            return nearest.map(name -> Words.say("match.did-you-mean", Quoted.of(name)))
                    .orElseGet(() -> Words.say("held.heat-source-refused.known", String.join(", ", known)));
        }
    }

    /** The row wishes for a heat source that can't press this blank. A wish is never replaced by another source. */
    record HeatSourceRefused(Blank blank, Refusal refusal) implements MatchReason {
        @Override
        public String code() {
            return "heat-source-refused";
        }

        @Override
        public OrderField field() {
            return OrderField.HEAT_SOURCE;
        }

        @Override
        public String message() {
            return Words.say(
                    "held.heat-source-refused.message",
                    refusal.source().id(),
                    blank.sku(),
                    WhyNot.of(refusal.why(), blank, refusal.source()));
        }

        @Override
        public String cure() {
            return Words.say("held.heat-source-refused.cure");
        }
    }

    /** None of the heat sources takes the blank. */
    record NoHeatSource(Blank blank, List<Refusal> refusals) implements MatchReason {
        public NoHeatSource {
            refusals = List.copyOf(refusals);
        }

        @Override
        public String code() {
            return "no-heat-source";
        }

        @Override
        public OrderField field() {
            return OrderField.SKU;
        }

        @Override
        public String message() {
            String each = refusals.stream().map(this::said).collect(Collectors.joining("; "));
            return each.isEmpty()
                    ? Words.say("held.no-heat-source.none", blank.sku())
                    : Words.say("held.no-heat-source.message", blank.sku(), each);
        }

        @Override
        public String cure() {
            return Words.say("held.no-heat-source.cure", blank.sku());
        }

        private String said(Refusal refusal) {
            HeatSource source = refusal.source();
            return Words.say("match.source-and-why", source.id(), WhyNot.of(refusal.why(), blank, source));
        }
    }
}
