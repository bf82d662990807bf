package bandwright.pipeline.size;

import bandwright.pipeline.artwork.Flaw;
import bandwright.pipeline.held.Reason;
import bandwright.rules.designs.Placement;
import bandwright.rules.orders.OrderField;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.table.Quoted;
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.util.List;
import java.util.Optional;

/** Every way that size can hold a row: nothing to print on, a picture that does not suit the band, no paper that takes it. */
public sealed interface SizeReason extends Reason {

    /** Margins, handle and limits leave nothing of the wall. */
    record BandEmpty(String sku, String source) implements SizeReason {
        @Override
        public String code() {
            return "band-empty";
        }

        @Override
        public OrderField field() {
            return OrderField.SKU;
        }

        @Override
        public String message() {
            return Words.say("held.band-empty.message", sku, source);
        }

        @Override
        public String cure() {
            return Words.say("held.band-empty.cure", sku, source);
        }
    }

    /** A picture whose packed bytes turn out to be rubbish when it is looked at. */
    record PictureDamaged(String picture) implements SizeReason {
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
            return Words.say("held.artwork-unreadable.message", Quoted.text(picture), Flaw.DAMAGED.message());
        }

        @Override
        public String cure() {
            return Flaw.DAMAGED.cure();
        }
    }

    /**
     * A band of half the wall or less, on which nothing is left beside the handle.
     *
     * @param around of the band
     * @param circumference round the wall half-way up
     */
    record SidesEmpty(
            String sku, String source, String design, Placement placement, Length around, Length circumference)
            implements SizeReason {
        @Override
        public String code() {
            return "band-empty";
        }

        @Override
        public OrderField field() {
            return OrderField.DESIGN;
        }

        @Override
        public String message() {
            return Words.say(
                    "size.sides-empty.message",
                    design,
                    placement.word(),
                    sku,
                    source,
                    around.mm2(),
                    circumference.mm2());
        }

        @Override
        public String cure() {
            return Words.say("size.sides-empty.cure", sku, source);
        }
    }

    /** A picture whose sides differ so much that nothing of it could be seen. */
    record TooSlim(String picture, int width, int height) implements SizeReason {
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
            return Words.say("size.too-slim.message", picture, width, height);
        }

        @Override
        public String cure() {
            return Words.say("size.too-slim.cure");
        }
    }

    /**
     * Too few pixels.
     *
     * @param least width x height in pixels that the shop would print
     * @param good width x height in pixels that it would print without a note
     */
    record PpiLow(String picture, String sku, int ppi, double limit, String least, String good) implements SizeReason {
        @Override
        public String code() {
            return "ppi-low";
        }

        @Override
        public OrderField field() {
            return OrderField.DESIGN;
        }

        @Override
        public String message() {
            return Words.say("held.ppi-low.message", picture, ppi, sku, Figures.number(limit));
        }

        @Override
        public String cure() {
            return Words.say("held.ppi-low.cure", least, sku, good);
        }
    }

    /** Too much of the picture cut off. */
    record CropLarge(String picture, String sku, double crop, double limit) implements SizeReason {
        @Override
        public String code() {
            return "crop-large";
        }

        @Override
        public OrderField field() {
            return OrderField.DESIGN;
        }

        @Override
        public String message() {
            return Words.say("held.crop-large.message", picture, Figures.percentUp(crop), sku, Figures.percent(limit));
        }

        @Override
        public String cure() {
            return Words.say("held.crop-large.cure", sku);
        }
    }

    /** Too much distorted. */
    record StretchLarge(String picture, String sku, double stretch, double limit) implements SizeReason {
        @Override
        public String code() {
            return "stretch-large";
        }

        @Override
        public OrderField field() {
            return OrderField.DESIGN;
        }

        @Override
        public String message() {
            return Words.say(
                    "held.stretch-large.message", picture, Figures.percentUp(stretch), sku, Figures.percent(limit));
        }

        @Override
        public String cure() {
            return Words.say("held.stretch-large.cure", sku);
        }
    }

    /**
     * Letters that can't be read on what is round them.
     *
     * @param letters their colour in words
     * @param ground what they stand on, in words
     * @param isVanishing whether they are as good as not there
     */
    record ContrastLow(
            String text,
            String letters,
            String ground,
            double ratio,
            double limit,
            boolean isVanishing,
            Cure way,
            boolean isOnWhite)
            implements SizeReason {
        /** What would do better there. */
        public enum Cure {
            DARKER,
            LIGHTER,
            NO_INK
        }

        @Override
        public String code() {
            return "contrast-low";
        }

        @Override
        public OrderField field() {
            return isOnWhite ? OrderField.DESIGN : OrderField.SKU;
        }

        @Override
        public String message() {
            return Words.say(
                    isVanishing ? "held.contrast-low.message" : "held.contrast-low.message.hard",
                    letters,
                    text,
                    ground,
                    Figures.numberDown(ratio),
                    Figures.number(limit));
        }

        @Override
        public String cure() {
            String inks =
                    switch (way) {
                        case DARKER -> Words.say("held.contrast-low.cure.darker", text);
                        case LIGHTER -> Words.say("held.contrast-low.cure.lighter", text);
                        case NO_INK -> Words.say("held.contrast-low.cure.no-ink", text);
                    };
            return isOnWhite ? inks : inks + " " + Words.say("held.contrast-low.cure.blank");
        }
    }

    /**
     * No paper takes it.
     *
     * @param largest the sheet with the most room; empty where no printer takes any of the wanted papers
     */
    record TooLargeForPaper(String sku, Length width, Length height, Optional<PaperRoom> largest)
            implements SizeReason {
        @Override
        public String code() {
            return "too-large-for-paper";
        }

        @Override
        public OrderField field() {
            return OrderField.SKU;
        }

        @Override
        public String message() {
            String needed = Figures.size(width, height);
            return largest.map(room -> Words.say("held.too-large-for-paper.message", sku, needed, said(room)))
                    .orElseGet(() -> Words.say("held.too-large-for-paper.none", sku, needed));
        }

        @Override
        public String cure() {
            return Words.say("held.too-large-for-paper.cure");
        }

        private static String said(PaperRoom room) {
            String inside = Figures.size(room.inside().width(), room.inside().height());
            return Words.say("size.room", room.paper().id(), inside);
        }
    }

    /**
     * Sound itself, but other rows of its order are held, and the shop makes orders whole.
     *
     * @param rows where they stand
     */
    record OrderIncomplete(List<String> rows) implements SizeReason {
        public OrderIncomplete {
            rows = List.copyOf(rows);
        }

        @Override
        public String code() {
            return "order-incomplete";
        }

        @Override
        public OrderField field() {
            return OrderField.ORDER;
        }

        @Override
        public String message() {
            return Words.say("held.order-incomplete.message", String.join("; ", rows));
        }

        @Override
        public String cure() {
            return Words.say("held.order-incomplete.cure");
        }
    }
}
