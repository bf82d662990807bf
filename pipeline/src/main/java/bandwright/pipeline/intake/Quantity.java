package bandwright.pipeline.intake;

import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How many pieces a cell orders: 3, 3.0 and "3" are three; 0, -1, 2.5, 1,000 and "two" are no answer. */
final class Quantity {
    private static final Pattern WHOLE = Pattern.compile("0*([1-9][0-9]{0,8})(?:[.]0+)?");

    private Quantity() {}

    /** Empty where the cell is no whole number from 1 to {@code most}. */
    static OptionalInt parse(String text, char decimal, int most) {
        String pointed = decimal == '.' ? text : text.replace('.', ' ').replace(decimal, '.');
        // A number cell has the point whatever the site writes.
        Matcher whole = WHOLE.matcher(text.matches("[0-9]+[.]0") ? text : pointed);
        if (!whole.matches()) {
            return OptionalInt.empty();
        }
        int quantity = Integer.parseInt(whole.group(1));
        return quantity <= most ? OptionalInt.of(quantity) : OptionalInt.empty();
    }
}
