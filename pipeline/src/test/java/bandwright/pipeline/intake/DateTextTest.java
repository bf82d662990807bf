package bandwright.pipeline.intake;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.orders.DateOrder;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DateTextTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-03-02",
                "2026-03-02T14:05:00Z",
                "2026-03-02T14:05:00.123+01:00",
                "2026-03-02 14:05:00 UTC",
                "2026/3/2",
                "2026.03.02",
                "20260302",
                "2 March 2026",
                "2nd of March, 2026",
                "02-Mar-2026",
                "02-mar-26",
                "2. March 2026",
                "Mar 2, 2026",
                "March 2nd, 2026",
                "Mon, Mar 2, 2026",
                "Monday 2 March 2026",
                "Mar 2, 2026 at 2:05 PM",
                "2026-Mar-02",
                "2 MAR 2026 14:05"
            })
    void aFormThatCanMeanOneDayIsRead(String text) {
        assertThat(DateText.readings(text, Optional.empty())).containsExactly(LocalDate.of(2026, 3, 2));
        assertThat(DateText.readings(text, Optional.of(DateOrder.DMY))).containsExactly(LocalDate.of(2026, 3, 2));
    }

    @ParameterizedTest
    @CsvSource({
        "02/03/2026, 2026-02-03 2026-03-02",
        "2.3.2026, 2026-02-03 2026-03-02",
        "02-03-26, 2002-03-26 2026-02-03 2026-03-02",
        "13/04/2026, 2026-04-13",
        "04/13/2026 9:00, 2026-04-13",
        "05/05/2026, 2026-05-05"
    })
    void digitsAloneHaveEveryReading(String text, String days) {
        assertThat(DateText.readings(text, Optional.empty()))
                .map(LocalDate::toString)
                .containsExactly(days.split(" "));
    }

    @ParameterizedTest
    @CsvSource({
        "02/03/2026, DMY, 2026-03-02",
        "02/03/2026 14:05, MDY, 2026-02-03",
        "26.03.02, YMD, 2026-03-02",
        "02/03/26, DMY, 2026-03-02"
    })
    void aSitesOrderSettlesDigits(String text, DateOrder order, LocalDate day) {
        assertThat(DateText.readings(text, Optional.of(order))).containsExactly(day);
    }

    @ParameterizedTest
    @CsvSource({"13/04/2026, MDY", "02/03/2026, YMD", "31/02/2026, DMY"})
    void whatASitesOrderForbidsIsNoDay(String text, DateOrder order) {
        assertThat(DateText.readings(text, Optional.of(order))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"soon", "2026-02-30", "46083", "2026", "30 Febuary 2026", "Friday", "1/2", "0/0/0000", "14:05"})
    void otherTextIsNoDay(String text) {
        assertThat(DateText.readings(text, Optional.empty())).isEmpty();
    }
}
