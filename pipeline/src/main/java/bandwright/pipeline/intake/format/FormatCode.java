package bandwright.pipeline.intake.format;

/** Takes a format code of a spreadsheet apart: {@code "Q"0000;-0} is the word Q and four digits (ECMA-376 18.8.31). */
final class FormatCode {
    private final String code;
    private final StringBuilder before = new StringBuilder();
    private final StringBuilder behind = new StringBuilder();
    private int digits;
    private int decimals;
    private boolean seenDigit;
    private boolean seenPoint;
    private boolean percent;
    /** Literals among the digits, scales of a thousand, powers of ten, fractions, times: shown as the bare number. */
    private boolean plain;

    FormatCode(String code) {
        this.code = code;
    }

    /** The first section: positive numbers, or all. */
    NumberFormat parsed() {
        int at = 0;
        while (at < code.length() && code.charAt(at) != ';') {
            at = step(at);
        }
        if (plain || !seenDigit) {
            return NumberFormat.GENERAL;
        }
        return new NumberFormat(
                false,
                before.toString(),
                Math.max(1, digits),
                decimals,
                percent,
                behind.toString().stripTrailing());
    }

    private int step(int at) {
        char c = code.charAt(at);
        switch (c) {
            case '"' -> {
                return quoted(at);
            }
            case '[' -> {
                return bracket(at);
            }
            case '\\' -> {
                return escaped(at);
            }
            case '_', '*' -> {
                return at + 2;
            }
            case '0', '#', '?' -> digit(c);
            case '.' -> seenPoint = true;
            case ',' -> plain |= isScale(at);
            case '%' -> percent = true;
            case 'e', 'E', '/', 'h', 'H', 's', 'S', 'm', 'M', '@' -> plain = true;
            default -> literal(String.valueOf(c));
        }
        if (c == '%') {
            literal("%");
        }
        return at + 1;
    }

    private void digit(char c) {
        plain |= behind.length() > 0; // 000-0000
        seenDigit = true;
        if (c != '0') {
            return;
        }
        if (seenPoint) {
            decimals++;
        } else {
            digits++;
        }
    }

    /** A comma behind the last digit divides by a thousand; one among the digits only parts them. */
    private boolean isScale(int at) {
        char next = at + 1 < code.length() ? code.charAt(at + 1) : ';';
        return next != '0' && next != '#' && next != '?';
    }

    private void literal(String text) {
        (seenDigit ? behind : before).append(text);
    }

    private int quoted(int at) {
        int end = code.indexOf('"', at + 1);
        int to = end < 0 ? code.length() : end;
        literal(code.substring(at + 1, to));
        return to + 1;
    }

    private int escaped(int at) {
        if (at + 1 < code.length()) {
            literal(code.substring(at + 1, at + 2));
        }
        return at + 2;
    }

    /** {@code [$EUR-407]} is a currency; all others are colours and conditions. */
    private int bracket(int at) {
        int end = code.indexOf(']', at);
        int to = end < 0 ? code.length() : end;
        if (code.startsWith("[$", at)) {
            int dash = code.indexOf('-', at);
            literal(code.substring(at + 2, dash > at && dash < to ? dash : to));
        }
        return to + 1;
    }
}
