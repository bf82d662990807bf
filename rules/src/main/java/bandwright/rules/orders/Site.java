package bandwright.rules.orders;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How one selling site writes its orders: a row of sites.csv. The row with an empty name serves every file that no
 * other row takes.
 *
 * @param files a pattern with * and ? for the file's name; empty = found by its headers
 * @param headerRow the number that the spreadsheet program shows; empty = found
 * @param decimal the decimal sign
 * @param continued whether a row whose order-level cells are all empty belongs to the order above it
 */
public record Site(
        String name,
        String files,
        OptionalInt headerRow,
        Optional<DateOrder> dateOrder,
        char decimal,
        boolean continued,
        List<String> skipStatus,
        String textSeparator,
        List<String> emptyWords,
        boolean approval,
        String note) {
    public Site {
        skipStatus = List.copyOf(skipStatus);
        emptyWords = List.copyOf(emptyWords);
    }
}
