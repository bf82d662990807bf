package bandwright.rules.paper;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blanks;
import bandwright.rules.designs.Designs;
import bandwright.rules.designs.Texts;
import bandwright.rules.heat.Cautions;
import bandwright.rules.heat.HeatSources;
import bandwright.rules.heat.PressSettings;
import bandwright.rules.orders.OrderColumns;
import bandwright.rules.orders.Sites;
import bandwright.rules.paper.PaperChoice.Answer;
import bandwright.rules.sample.SampleShop;
import bandwright.rules.stock.Stock;
import bandwright.rules.units.Length;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The keepers' desk printer takes small, medium, large and a roll; the wide one takes poster. */
class PaperChoiceTest {
    private static final List<Paper> PAPERS = List.of(
            sheet("small", 150, 200),
            sheet("medium", 200, 300),
            sheet("large", 300, 400),
            roll("roll", 600),
            sheet("poster", 500, 700),
            sheet("stray", 900, 900));
    private static final List<Printer> PRINTERS = List.of(
            printer("wide", List.of("poster", "large")),
            printer("desk", List.of("small", "medium", "large", "roll")),
            printer("back room", List.of("medium", "large", "small", "poster")));

    @Test
    void theWantedPaperIsTakenInTheShopsOwnPrinter() {
        Answer answer = choice(List.of("large"), "desk", Optional.empty()).forPicture(Length.mm(200), Length.mm(100));
        assertThat(ids(answer)).containsExactly("large in desk");
    }

    @Test
    void aPaperThatTheShopsPrinterDoesNotTakeGoesToTheFirstThatDoes() {
        Answer answer = choice(List.of("poster"), "desk", Optional.empty()).forPicture(Length.mm(200), Length.mm(100));
        assertThat(ids(answer)).containsExactly("poster in wide");
    }

    @Test
    void everyWantedPaperThatTakesTheTransferIsOffered() {
        PaperChoice choice = choice(List.of("small", "large", "medium"), "desk", Optional.empty());
        assertThat(ids(choice.forPicture(Length.mm(200), Length.mm(100))))
                .containsExactly("large in desk", "medium in desk");
    }

    @Test
    void aTransferTooLargeForTheWantedPaperGoesToThePrintersNextOneThatTakesIt() {
        PaperChoice choice = choice(List.of("small"), "desk", Optional.empty());
        assertThat(ids(choice.forPicture(Length.mm(250), Length.mm(100)))).containsExactly("medium in desk");
        assertThat(ids(choice.forPicture(Length.mm(350), Length.mm(100)))).containsExactly("large in desk");
    }

    @Test
    void theNextPaperIsTheOneBehindTheWantedInThePrintersOwnOrder() {
        PaperChoice choice = choice(List.of("small"), "back room", Optional.empty());
        assertThat(ids(choice.forPicture(Length.mm(350), Length.mm(100)))).containsExactly("poster in back room");
    }

    @Test
    void thePaperOfTheCommandLineBeatsTheShops() {
        PaperChoice choice = choice(List.of("small"), "desk", Optional.of("Medium"));
        assertThat(ids(choice.forPicture(Length.mm(100), Length.mm(50)))).containsExactly("medium in desk");
    }

    @Test
    void aShopThatNamesNeitherPaperNorPrinterGetsTheFirstPaperOfTheTable() {
        PaperChoice choice = choice(List.of(), "", Optional.empty());
        assertThat(ids(choice.forPicture(Length.mm(100), Length.mm(50)))).containsExactly("small in desk");
    }

    @Test
    void whatOnlyARollTakesGoesOnTheRoll() {
        Answer answer = choice(List.of("small"), "desk", Optional.empty()).forPicture(Length.mm(900), Length.mm(100));
        assertThat(ids(answer)).containsExactly("roll in desk");
    }

    @Test
    void aWantedRollIsNotQuietlyReplacedByASheet() {
        Answer answer = choice(List.of("roll"), "desk", Optional.empty()).forPicture(Length.mm(100), Length.mm(50));
        assertThat(ids(answer)).containsExactly("roll in desk");
    }

    @Test
    void whatNothingTakesNamesThePaperWithTheMostRoom() {
        Answer answer = choice(List.of("small"), "desk", Optional.empty()).forPicture(Length.mm(900), Length.mm(700));
        assertThat(answer.rooms()).isEmpty();
        assertThat(answer.largest().orElseThrow().paper().id()).isEqualTo("roll");
    }

    @Test
    void aPaperThatNoPrinterTakesOffersNothing() {
        Answer answer = choice(List.of("stray"), "desk", Optional.empty()).forPicture(Length.mm(50), Length.mm(50));
        assertThat(answer.rooms()).isEmpty();
        assertThat(answer.largest()).isEmpty();
    }

    private static List<String> ids(Answer answer) {
        return answer.rooms().stream()
                .map(room -> room.paper().id() + " in " + room.printer().id())
                .toList();
    }

    private static PaperChoice choice(List<String> papers, String printer, Optional<String> asked) {
        return PaperChoice.of(rules(papers, printer), asked);
    }

    private static Paper sheet(String id, double width, double height) {
        return paper(id, width, Optional.of(Length.mm(height)));
    }

    private static Paper roll(String id, double width) {
        return paper(id, width, Optional.empty());
    }

    private static Paper paper(String id, double width, Optional<Length> height) {
        Length none = Length.ZERO;
        return new Paper(
                id, id, Length.mm(width), height, Optional.empty(), none, none, none, none, Optional.empty(), "");
    }

    private static Printer printer(String id, List<String> papers) {
        return new Printer(id, papers, Optional.empty(), MirrorBy.FILE, Optional.empty(), Optional.empty(), 1, 1, "");
    }

    private static Rulebook rules(List<String> papers, String printer) {
        return new Rulebook(
                SampleShop.withPapers(papers, printer),
                new Blanks(List.of()),
                new HeatSources(List.of()),
                new PressSettings(List.of()),
                new Papers(PAPERS),
                new Printers(PRINTERS),
                new Designs(List.of()),
                new Texts(List.of()),
                List.of(),
                List.of(),
                new Sites(List.of()),
                new OrderColumns(List.of()),
                new Stock(List.of()),
                List.of(),
                new Cautions(List.of()));
    }
}
