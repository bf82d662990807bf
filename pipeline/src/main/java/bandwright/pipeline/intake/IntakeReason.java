package bandwright.pipeline.intake;

import bandwright.pipeline.held.Reason;
import bandwright.rules.orders.OrderField;
import bandwright.rules.table.Quoted;
import bandwright.rules.words.Words;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.NavigableSet;
import java.util.stream.Collectors;

/** Every way in which intake can hold a row. */
public sealed interface IntakeReason extends Reason {
    @Override
    default String cure() {
        return Words.say("held." + code() + ".cure");
    }

    /**
     * No order number, or a formula that failed in its place.
     *
     * @param shown what the cell says instead; mostly nothing
     */
    record OrderMissing(String shown) implements IntakeReason {
        @Override
        public String code() {
            return "order-missing";
        }

        @Override
        public OrderField field() {
            return OrderField.ORDER;
        }

        @Override
        public String message() {
            return shown.isEmpty()
                    ? Words.say("held.order-missing.message")
                    : Words.say("held.order-missing.formula.message", Quoted.text(shown));
        }
    }

    /** A quantity that is empty or no whole number from 1 to the shop's most. */
    record QuantityUnclear(String shown, int most) implements IntakeReason {
        @Override
        public String code() {
            return "quantity-unclear";
        }

        @Override
        public OrderField field() {
            return OrderField.QUANTITY;
        }

        @Override
        public String message() {
            return shown.isEmpty()
                    ? Words.say("held.quantity-unclear.empty.message")
                    : Words.say("held.quantity-unclear.message", Quoted.text(shown), most);
        }

        @Override
        public String cure() {
            return Words.say("held.quantity-unclear.cure", most);
        }
    }

    /**
     * A date that is no day, or more than one.
     *
     * @param readings the days that it can mean; none where it is no date at all
     */
    record DateUnclear(OrderField field, String shown, List<LocalDate> readings) implements IntakeReason {
        public DateUnclear {
            readings = List.copyOf(readings);
        }

        DateUnclear(OrderField field, String shown, NavigableSet<LocalDate> readings) {
            this(field, shown, List.copyOf(readings));
        }

        @Override
        public String code() {
            return "date-unclear";
        }

        @Override
        public String message() {
            if (readings.isEmpty()) {
                return Words.say("held.date-unclear.none.message", Quoted.text(shown));
            }
            String days =
                    readings.stream().map(DateUnclear::written).collect(Collectors.joining(Words.say("intake.or")));
            return readings.size() == 1
                    ? Words.say("held.date-unclear.order.message", Quoted.text(shown), days)
                    : Words.say("held.date-unclear.message", Quoted.text(shown), days);
        }

        /** 2 March 2026. */
        private static String written(LocalDate day) {
            String month = Words.say("intake.month." + day.getMonthValue());
            return String.format(Locale.ROOT, "%d %s %d", day.getDayOfMonth(), month, day.getYear());
        }
    }

    /** A name kept as a number that is longer than spreadsheets can keep: its last digits are gone. */
    record NumberDamaged(OrderField field, String shown) implements IntakeReason {
        @Override
        public String code() {
            return "number-damaged";
        }

        @Override
        public String message() {
            return Words.say("held.number-damaged.message", Quoted.text(shown));
        }
    }
}
