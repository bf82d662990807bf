package bandwright.pipeline.docs;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.held.Reason;
import bandwright.pipeline.held.SkippedRow;
import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import bandwright.rules.words.Words;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nothing that the program can say or read is missing from the pages made from it. */
final class EveryCodeTest {
    private static final JavaClasses MAIN = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("bandwright");

    @Test
    void everyWayToBeHeldHasAnExample() {
        Set<String> shown = all().stream()
                .map(reason -> reason.getClass().getName())
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> known = MAIN.stream()
                .filter(one -> one.isAssignableTo(Reason.class) && !one.isInterface())
                .map(one -> one.getName())
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(known).isNotEmpty();
        assertThat(shown).isEqualTo(known);
    }

    /** Each sentence of a held row stands on the page, so the branches of a reason are shown too. */
    @Test
    void everySentenceOfAHeldRowIsShown() {
        List<String> said = new ArrayList<>();
        for (Reason reason : all()) {
            said.add(reason.message());
            said.add(reason.cure());
            reason.question().ifPresent(question -> said.add(question.needed()));
        }
        for (String key : new TreeSet<>(Words.keys())) {
            if ((key.startsWith("held.") && !key.startsWith("held.ask"))
                    || key.matches("(match|size)\\.(why|too-slim)\\..*")) {
                Pattern sentence =
                        Pattern.compile(".*\\Q" + Words.say(key).replaceAll("\\{[0-9]}", "\\\\E.*\\\\Q") + "\\E.*");
                assertThat(said).as(key).anyMatch(one -> sentence.matcher(one).matches());
            }
        }
    }

    @Test
    void everyNoteHasAnExample() {
        assertThat(HeldPage.noteCodes())
                .containsExactlyInAnyOrderElementsOf(Words.keys().stream()
                        .filter(key -> key.startsWith("note."))
                        .map(key -> key.substring("note.".length()))
                        .toList());
        assertThat(HeldPage.text()).doesNotContain("{0}", "{1}", "{2}", "{3}");
    }

    /** Whoever makes a skipped row says its code in the same file. */
    @Test
    void everyWayToBeSkippedHasAnExample() throws IOException, IllegalAccessException {
        Set<String> codes = new TreeSet<>();
        for (Field code : SkippedRow.class.getFields()) {
            codes.add(String.valueOf(code.get(null)));
        }
        assertThat(codes).hasSizeGreaterThan(2);
        assertThat(HeldPage.skippedCodes()).containsExactlyInAnyOrderElementsOf(codes);
        Pattern codeOfItsOwn = Pattern.compile("new SkippedRow\\([^;]*\"[a-z-]+\"");
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                assertThat(codeOfItsOwn.matcher(Files.readString(file)).find())
                        .as("a code that SkippedRow doesn't list in %s", file)
                        .isFalse();
            }
        }
    }

    /** The reader names all its keys when one is wrong. */
    @Test
    void everyKeyOfTheShopHasItsValue(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("shop.csv"), "key,value\nzzzzzzzzzz,1\n");
        RulebookFaults faults = org.assertj.core.api.Assertions.catchThrowableOfType(
                RulebookFaults.class, () -> Rulebook.read(Optional.of(folder)));
        assertThat(faults.faults().get(0).cure()).contains(String.join(", ", ShopValues.keys()) + ".");
    }

    private static List<Reason> all() {
        return new ReasonExamples().all();
    }
}
