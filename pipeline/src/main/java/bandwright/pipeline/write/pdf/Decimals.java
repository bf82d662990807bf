package bandwright.pipeline.write.pdf;

/** A number as PDF writes it: decimals without exponent, locale or trailing zeros. 72.50 is {@code 72.5}. */
final class Decimals {
    private Decimals() {}

    static void append(StringBuilder out, double value, int decimals) {
        long power = power(decimals);
        long scaled = Math.round(Math.abs(value) * power);
        if (value < 0 && scaled > 0) {
            out.append('-');
        }
        out.append(scaled / power);
        long fraction = scaled % power;
        if (fraction == 0) {
            return;
        }
        int digits = decimals;
        while (fraction % 10 == 0) {
            fraction /= 10;
            digits--;
        }
        out.append('.');
        for (long place = power(digits - 1); place > fraction; place /= 10) {
            out.append('0');
        }
        out.append(fraction);
    }

    private static long power(int decimals) {
        long power = 1;
        for (int i = 0; i < decimals; i++) {
            power *= 10;
        }
        return power;
    }
}
