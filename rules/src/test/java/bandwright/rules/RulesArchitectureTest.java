package bandwright.rules;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Locale;
import java.util.Random;
import java.util.TimeZone;
import java.util.concurrent.ThreadLocalRandom;

/** What the rules may know, and what they must never ask. */
@AnalyzeClasses(packages = "bandwright", importOptions = ImportOption.DoNotIncludeTests.class)
class RulesArchitectureTest {
    @ArchTest
    static final ArchRule rulesKnowNothingOfThePipeline = noClasses()
            .that()
            .resideInAPackage("bandwright.rules..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("bandwright.pipeline..");

    @ArchTest
    static final ArchRule unitsAndWordsKnowNoOtherPackage = noClasses()
            .that()
            .resideInAnyPackage("bandwright.rules.units", "bandwright.rules.words")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "bandwright.rules",
                    "bandwright.rules.table..",
                    "bandwright.rules.blanks..",
                    "bandwright.rules.heat..",
                    "bandwright.rules.paper..",
                    "bandwright.rules.designs..",
                    "bandwright.rules.orders..",
                    "bandwright.rules.stock..");

    @ArchTest
    static final ArchRule tablesAreReadWithoutKnowingTheirNouns = noClasses()
            .that()
            .resideInAPackage("bandwright.rules.table")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "bandwright.rules",
                    "bandwright.rules.blanks..",
                    "bandwright.rules.heat..",
                    "bandwright.rules.paper..",
                    "bandwright.rules.designs..",
                    "bandwright.rules.orders..",
                    "bandwright.rules.stock..");

    @ArchTest
    static final ArchRule designsOrdersAndStockKnowNoOtherNoun = noClasses()
            .that()
            .resideInAnyPackage("bandwright.rules.designs", "bandwright.rules.orders", "bandwright.rules.stock")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "bandwright.rules",
                    "bandwright.rules.blanks..",
                    "bandwright.rules.heat..",
                    "bandwright.rules.paper..");

    @ArchTest
    static final ArchRule nobodyAsksAClock = noClasses()
            .should()
            .callMethod(LocalDate.class, "now")
            .orShould()
            .callMethod(LocalTime.class, "now")
            .orShould()
            .callMethod(Instant.class, "now")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .dependOnClassesThat()
            .belongToAnyOf(Clock.class, TimeZone.class);

    @ArchTest
    static final ArchRule nobodyThrowsDice = noClasses()
            .should()
            .dependOnClassesThat()
            .belongToAnyOf(Random.class, ThreadLocalRandom.class, java.util.UUID.class)
            .orShould()
            .callMethod(Math.class, "random");

    @ArchTest
    static final ArchRule nobodyTakesTheComputersLocale = noClasses()
            .should()
            .callMethod(Locale.class, "getDefault")
            .orShould()
            .callMethod(String.class, "toLowerCase")
            .orShould()
            .callMethod(String.class, "toUpperCase")
            .orShould()
            .callMethod(String.class, "format", String.class, Object[].class)
            .orShould()
            .callMethod(String.class, "getBytes");
}
