package bandwright.pipeline.intake.format;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberFormatTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "General         | 71                | 71",
                "General         | 1234567890123     | 1234567890123",
                "General         | 999999999999999   | 999999999999999",
                "General         | 0.30000000000000004 | 0.3",
                "General         | 2.5               | 2.5",
                "General         | 0.0000001         | 0.0000001",
                "General         | -0.0              | 0",
                "General         | -3                | -3",
                "General         | 1e30              | 1E+30",
                "00000           | 123               | 00123",
                "00000           | 1234567           | 1234567",
                "0               | 2.5               | 2.5",
                "\"Q\"0000         | 123               | Q0123",
                "\\Q0000          | 123               | Q0123",
                "0000;[Red]-0000 | -12               | -0012",
                "#,##0           | 1234              | 1234",
                "0%              | 0.25              | 25%",
                "0.00            | 3                 | 3.00",
                "#,##0.00\\ [$EUR-407] | 12.5         | 12.50 EUR",
                "_(* #,##0_)     | 42                | 42",
                "0.00E+00        | 12                | 12",
                "000-0000        | 1234567           | 1234567",
                "0,              | 12000             | 12000",
                "# ?/?           | 0.5               | 0.5",
            })
    void aNumberKeepsItsZerosAndWordsAndIsNeverRounded(String code, double value, String shown) {
        assertThat(NumberFormat.of(code).shown(value)).isEqualTo(shown);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "dd.mm.yyyy",
                "[$-409]mmm d;@",
                "yyyy\\-mm\\-dd hh:mm",
                "d/m/yy",
                "[$-F800]dddd\\, mmmm dd\\, yyyy"
            })
    void formatsWithADayAreDates(String code) {
        assertThat(NumberFormat.of(code).isDate()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"General", "0", "h:mm:ss", "[h]:mm", "\"day\" 0", "[Red]0", "0\\d", "@", "", "\"", "[", "\\", "_"
            })
    void otherFormatsAreNot(String code) {
        assertThat(NumberFormat.of(code).isDate()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"14, true", "17, true", "22, true", "27, true", "57, true", "0, false", "18, false", "49, false"})
    void builtInDatesGoByTheirNumber(int id, boolean isDate) {
        assertThat(NumberFormat.builtIn(id).isDate()).isEqualTo(isDate);
    }

    @ParameterizedTest
    @CsvSource({
        "999999999999999, false",
        "1000000000000000, true",
        "114736829102938475, true",
        "0.12345678901234567, false"
    })
    void aWholeNumberOfOverFifteenDigitsIsDamaged(double value, boolean damaged) {
        assertThat(NumberFormat.isDamaged(value)).isEqualTo(damaged);
    }
}
