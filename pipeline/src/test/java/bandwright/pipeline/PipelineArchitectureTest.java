package bandwright.pipeline;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleName;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.Random;

/** The flow's arrows as a law: who may know whom. */
@AnalyzeClasses(packages = "bandwright", importOptions = ImportOption.DoNotIncludeTests.class)
final class PipelineArchitectureTest {
    @ArchTest
    static final ArchRule rulesNeverKnowThePipeline = noClasses()
            .that()
            .resideInAPackage("bandwright.rules..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("bandwright.pipeline..");

    @ArchTest
    static final ArchRule nothingKnowsTheCommandLine = noClasses()
            .that()
            .resideOutsideOfPackage("..cli..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("..cli..");

    @ArchTest
    static final ArchRule packagesHaveNoCircles =
            slices().matching("bandwright.pipeline.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule theNounsOfTheRulebookHaveNoCircles =
            slices().matching("bandwright.rules.(units|table|words)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule intakeKnowsNoLaterStage =
            knowsNone("intake", "artwork", "match", "size", "load", "tile", "write", "outbox");

    @ArchTest
    static final ArchRule matchKnowsNoLaterStage = knowsNone("match", "size", "load", "tile", "write", "outbox");

    @ArchTest
    static final ArchRule sizeKnowsNoLaterStage = knowsNone("size", "load", "tile", "write", "outbox");

    @ArchTest
    static final ArchRule loadKnowsNoLaterStage = knowsNone("load", "tile", "write", "outbox");

    @ArchTest
    static final ArchRule tileKnowsNoLaterStage = knowsNone("tile", "write", "outbox");

    @ArchTest
    static final ArchRule onlyTheFlowCallsTheStages = classes()
            .that(simpleName("Matching")
                    .or(simpleName("Sizing"))
                    .or(simpleName("Loading"))
                    .or(simpleName("Tiling"))
                    .or(simpleName("Intake")))
            .should()
            .onlyBeAccessed()
            .byClassesThat(resideInAPackage("bandwright.pipeline")
                    .or(resideInAPackage("..intake.."))
                    .or(resideInAPackage("..match.."))
                    .or(resideInAPackage("..size.."))
                    .or(resideInAPackage("..load.."))
                    .or(resideInAPackage("..tile..")));

    @ArchTest
    static final ArchRule noClockBelowTheCommandLine = noClasses()
            .that(not(resideInAPackage("..cli..")))
            .should()
            .callMethod(LocalDate.class, "now")
            .orShould()
            .callMethod(LocalDateTime.class, "now")
            .orShould()
            .callMethod(ZonedDateTime.class, "now")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(Random.class);

    @ArchTest
    static final ArchRule onlyTheCommandLinePrints = noClasses()
            .that(not(resideInAPackage("..cli..")))
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err");

    private static ArchRule knowsNone(String stage, String... later) {
        String[] packages = new String[later.length];
        for (int i = 0; i < later.length; i++) {
            packages[i] = "bandwright.pipeline." + later[i] + "..";
        }
        return noClasses()
                .that()
                .resideInAPackage("bandwright.pipeline." + stage + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(packages);
    }
}
