package bandwright.rules.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class RgbTest {
    @Test
    void aColourIsWrittenInSixDigits() {
        assertThat(new Rgb(1, 2, 171).hex()).isEqualTo("#0102AB");
        assertThat(Rgb.WHITE.hex()).isEqualTo("#FFFFFF");
    }

    @Test
    void aChannelOutsideAByteIsRefused() {
        assertThatThrownBy(() -> new Rgb(256, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Rgb(0, -1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Rgb(0, 0, 300)).isInstanceOf(IllegalArgumentException.class);
    }
}
