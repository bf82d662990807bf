package bandwright.pipeline.intake.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The figures are those of ECMA-376 Part 1, 18.17.4.1 to 18.17.4.3, and what spreadsheet programs show. */
class SerialsTest {
    @ParameterizedTest
    @CsvSource({
        "1, 1900-01-01",
        "59, 1900-02-28",
        "61, 1900-03-01",
        "35981, 1998-07-05",
        "46083, 2026-03-02",
        "2958465, 9999-12-31"
    })
    void daysCountFrom1900(double serial, String day) {
        assertThat(new Serials(false).find(serial).orElseThrow().toLocalDate()).hasToString(day);
    }

    @ParameterizedTest
    @CsvSource({"0, 1904-01-01", "60, 1904-03-01", "34519, 1998-07-05", "2957003, 9999-12-31"})
    void daysCountFrom1904(double serial, String day) {
        assertThat(new Serials(true).find(serial).orElseThrow().toLocalDate()).hasToString(day);
    }

    @ParameterizedTest
    @CsvSource({"0", "0.5", "60", "60.9", "-1", "2958466", "1e300", "NaN"})
    void whatIsNoDayIn1900IsNone(double serial) {
        assertThat(new Serials(false).find(serial)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"-1", "2957004"})
    void whatIsNoDayIn1904IsNone(double serial) {
        assertThat(new Serials(true).find(serial)).isEmpty();
    }

    @Test
    void theFractionIsTheTime() {
        assertThat(new Serials(false).find(46083.75)).contains(LocalDateTime.of(2026, 3, 2, 18, 0));
    }
}
