package bandwright.pipeline.size;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.Orientation;
import bandwright.pipeline.pixels.Sight;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TintTest {
    private static final Box PLACE = Box.of(Length.mm(200), Length.mm(100));

    @TempDir
    Path home;

    /** A storm lamp's dark right half on a ground of one colour. */
    private Sight lamp(Color ground, int groundColumns) throws IOException {
        BufferedImage image = new BufferedImage(200, 100, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < 200 * 100; i++) {
            image.setRGB(i % 200, i / 200, (i % 200 < groundColumns ? ground : new Color(60, 40, 20)).getRGB());
        }
        Path file = home.resolve("lamp.jpg");
        ImageIO.write(image, "jpg", file.toFile());
        return Sight.read(
                new ArtworkFile(
                        "lamp.jpg", file, Files.size(file), ArtworkFile.Kind.JPEG, 200, 100, Orientation.TOP_LEFT),
                1);
    }

    @ParameterizedTest
    @CsvSource({
        "250, 250, 250, true",
        "241, 241, 242, true",
        "255, 255, 255, false",
        "254, 254, 254, false",
        "236, 236, 236, false",
        "255, 250, 240, false"
    })
    void aGroundThatIsNearlyWhiteIsATint(int red, int green, int blue, boolean isTint) throws IOException {
        Optional<Tint> tint = Tint.of(lamp(new Color(red, green, blue), 120), PLACE, PLACE);
        assertThat(tint.isPresent()).isEqualTo(isTint);
        if (isTint) {
            assertThat(tint.get().share()).isBetween(0.55, 0.61);
            assertThat(tint.get().level()).isBetween(red - 1, blue + 1);
        }
    }

    @Test
    void aLittleOfItIsNoGround() throws IOException {
        assertThat(Tint.of(lamp(new Color(250, 250, 250), 36), PLACE, PLACE)).isEmpty();
    }

    @Test
    void onlyWhatIsPrintedCounts() throws IOException {
        Sight lamp = lamp(new Color(250, 250, 250), 120);
        Box left = new Box(Length.ZERO, Length.ZERO, Length.mm(100), Length.mm(100));
        Box right = new Box(Length.mm(130), Length.ZERO, Length.mm(70), Length.mm(100));
        assertThat(Tint.of(lamp, PLACE, left).orElseThrow().share()).isEqualTo(1);
        assertThat(Tint.of(lamp, PLACE, right)).isEmpty();
    }

    @Test
    void theNoteSaysAreaLevelAndCure() throws IOException {
        Note note = Tint.of(lamp(new Color(250, 250, 250), 120), PLACE, PLACE)
                .orElseThrow()
                .note();
        assertThat(note.code()).isEqualTo("tint");
        assertThat(note.message()).contains("%").contains("250 of 255").contains("pure white");
    }
}
