package bandwright.pipeline.artwork;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ArtworkShelfTest {
    @TempDir
    Path home;

    private void put(String name) throws IOException {
        Path file = home.resolve("artwork").resolve(name);
        Files.createDirectories(file.getParent());
        Files.write(file, PngSamples.of(4, 3, 8, 2).file());
    }

    private ArtworkShelf shelf() throws IOException {
        return ArtworkShelf.open(home.resolve("artwork"));
    }

    private static String nameOf(Found found) {
        assertThat(found).isInstanceOf(Found.Picture.class);
        return ((Found.Picture) found).artwork().name();
    }

    @Test
    void aFolderThatIsNotThereIsAnEmptyShelf() throws IOException {
        assertThat(shelf().list()).isEmpty();
        assertThat(shelf().find("tern.png")).isEqualTo(new Found.Missing("tern.png", List.of()));
    }

    @ParameterizedTest
    @CsvSource({
        "tern.png, tern.png",
        "'  tern.png ', tern.png",
        "TERN.PNG, tern.png",
        "birds/Tern.png, birds/Tern.png",
        "birds\\tern.png, birds/Tern.png",
        "./birds//tern.png, birds/Tern.png"
    })
    void namesAreFoundTrimmedAndWithoutCase(String asked, String found) throws IOException {
        put("tern.png");
        put("birds/Tern.png");
        assertThat(nameOf(shelf().find(asked))).isEqualTo(found);
    }

    @Test
    void ofTwoNamesThatDifferInCaseTheExactOneIsTaken() throws IOException {
        put("Lamp.png");
        put("lamp.png");
        assertThat(nameOf(shelf().find("lamp.png"))).isEqualTo("lamp.png");
        assertThat(shelf().find("LAMP.png")).isEqualTo(new Found.Missing("LAMP.png", List.of("Lamp.png", "lamp.png")));
    }

    @Test
    void aMisspeltNameComesWithTheNearest() throws IOException {
        put("tide-table.png");
        put("choir/storm-lamp.png");
        assertThat(shelf().find("tide-tabel.png"))
                .isEqualTo(new Found.Missing("tide-tabel.png", List.of("tide-table.png")));
        assertThat(shelf().find("storm-lamp.jpg"))
                .isEqualTo(new Found.Missing("storm-lamp.jpg", List.of("choir/storm-lamp.png")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../secret.png",
                "birds/../../secret.png",
                "..\\secret.png",
                "/etc/secret.png",
                "C:\\secret.png",
                "c:secret.png",
                "\\\\host\\x.png",
                " .. /secret.png"
            })
    void noNameLeavesTheFolder(String asked) throws IOException {
        put("tern.png");
        Files.write(home.resolve("secret.png"), PngSamples.of(4, 3, 8, 2).file());
        assertThat(shelf().find(asked))
                .isInstanceOfSatisfying(Found.Refused.class, refused -> assertThat(refused.flaw())
                        .isEqualTo(Flaw.OUTSIDE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tern.png\0.jpg", "tern\n.png", "\u001b[31mtern.png", "tern\u0085.png"})
    void namesWithControlCharactersAreRefusedAndShownWithoutThem(String asked) throws IOException {
        assertThat(shelf().find(asked)).isInstanceOfSatisfying(Found.Refused.class, refused -> {
            assertThat(refused.flaw()).isEqualTo(Flaw.NAME);
            assertThat(refused.name().chars().noneMatch(Character::isISOControl))
                    .isTrue();
        });
    }

    @Test
    void linksThatLeadOutAreRefusedAndThoseInsideAreFollowed() throws IOException {
        put("tern.png");
        Files.createDirectories(home.resolve("elsewhere"));
        Files.write(
                home.resolve("elsewhere/secret.png"), PngSamples.of(4, 3, 8, 2).file());
        Path artwork = home.resolve("artwork");
        Files.createSymbolicLink(artwork.resolve("out.png"), home.resolve("elsewhere/secret.png"));
        Files.createSymbolicLink(artwork.resolve("outer"), home.resolve("elsewhere"));
        Files.createSymbolicLink(artwork.resolve("nowhere.png"), artwork.resolve("gone.png"));
        Files.createSymbolicLink(artwork.resolve("bird.png"), artwork.resolve("tern.png"));
        for (String asked : List.of("out.png", "outer/secret.png", "outer", "nowhere.png")) {
            assertThat(shelf().find(asked)).as(asked).isInstanceOfSatisfying(Found.Refused.class, refused -> assertThat(
                            refused.flaw())
                    .isEqualTo(Flaw.OUTSIDE));
        }
        assertThat(nameOf(shelf().find("bird.png"))).isEqualTo("bird.png");
    }

    @Test
    void dotFilesAndFoldersTooDeepAreNotListed() throws IOException {
        put(".tern.png");
        put(".hidden/tern.png");
        put("a/b/c/d/e/f/g/h/eight.png");
        put("a/b/c/d/e/f/g/h/i/nine.png");
        assertThat(shelf().list())
                .filteredOn(name -> name.endsWith(".png"))
                .containsExactly("a/b/c/d/e/f/g/h/eight.png");
    }

    @Test
    void aFolderIsNoPicture() throws IOException {
        put("birds/tern.png");
        assertThat(shelf().find("birds")).isInstanceOf(Found.Missing.class);
    }

    @Test
    void eachFileIsReadOnce() throws IOException {
        put("tern.png");
        ArtworkShelf shelf = shelf();
        Found first = shelf.find("tern.png");
        Files.delete(home.resolve("artwork/tern.png"));
        assertThat(shelf.find("TERN.png")).isSameAs(first);
    }

    @Test
    void thePictureOfALineBeatsThatOfItsOrder() throws IOException {
        put("orders/Q1042.png");
        put("orders/Q1042-2.png");
        put("orders/Q_7.png");
        ArtworkShelf shelf = shelf();
        assertThat(shelf.findForOrder("Q1042", "2").map(ArtworkShelfTest::nameOf))
                .contains("orders/Q1042-2.png");
        assertThat(shelf.findForOrder("Q1042", "1").map(ArtworkShelfTest::nameOf))
                .contains("orders/Q1042.png");
        assertThat(shelf.findForOrder("q/7", "1").map(ArtworkShelfTest::nameOf)).contains("orders/Q_7.png");
        assertThat(shelf.findForOrder("Q104", "2")).isEqualTo(Optional.empty());
    }

    @Test
    void twoPicturesForOneOrderAreNotGuessedBetween() throws IOException {
        put("orders/Q1042.png");
        put("orders/Q1042.jpg");
        assertThat(shelf().findForOrder("Q1042", "1")).contains(new Found.Refused("orders/Q1042.jpg", Flaw.SEVERAL));
    }

    @Test
    void everyFlawHasWordsAndACure() {
        for (Flaw flaw : Flaw.values()) {
            assertThat(flaw.message()).isNotBlank();
            assertThat(flaw.cure()).endsWith(".");
        }
    }
}
