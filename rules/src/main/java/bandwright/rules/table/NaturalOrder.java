package bandwright.rules.table;

import java.util.Comparator;

/** The order in which people sort names with numbers in them, whatever the case of the letters: A2 before A10. */
public final class NaturalOrder implements Comparator<String> {
    public static final NaturalOrder INSTANCE = new NaturalOrder();

    private NaturalOrder() {}

    @Override
    public int compare(String one, String other) {
        int i = 0;
        int j = 0;
        while (i < one.length() && j < other.length()) {
            int order;
            if (isDigit(one.charAt(i)) && isDigit(other.charAt(j))) {
                int endOfOne = endOfDigits(one, i);
                int endOfOther = endOfDigits(other, j);
                order = compareNumbers(one, i, endOfOne, other, j, endOfOther);
                i = endOfOne;
                j = endOfOther;
            } else {
                order = compareFolded(one.charAt(i++), other.charAt(j++));
            }
            if (order != 0) {
                return order;
            }
        }
        int rest = Integer.compare(one.length() - i, other.length() - j);
        return rest != 0 ? rest : one.compareTo(other);
    }

    /** By value, however many digits; 07 and 7 are one number. */
    private static int compareNumbers(String one, int from, int end, String other, int otherFrom, int otherEnd) {
        int i = afterZeros(one, from, end);
        int j = afterZeros(other, otherFrom, otherEnd);
        if (end - i != otherEnd - j) {
            return Integer.compare(end - i, otherEnd - j);
        }
        while (i < end && one.charAt(i) == other.charAt(j)) {
            i++;
            j++;
        }
        return i == end ? 0 : Character.compare(one.charAt(i), other.charAt(j));
    }

    private static int afterZeros(String text, int from, int end) {
        int at = from;
        while (at < end && text.charAt(at) == '0') {
            at++;
        }
        return at;
    }

    private static int endOfDigits(String text, int from) {
        int end = from;
        while (end < text.length() && isDigit(text.charAt(end))) {
            end++;
        }
        return end;
    }

    private static int compareFolded(char one, char other) {
        return one == other ? 0 : Character.compare(folded(one), folded(other));
    }

    private static char folded(char c) {
        return Character.toLowerCase(Character.toUpperCase(c));
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
