package bandwright.pipeline.cli;

import bandwright.pipeline.Flow;
import bandwright.pipeline.Run;
import bandwright.pipeline.artwork.ArtworkShelf;
import bandwright.pipeline.intake.Inbox;
import bandwright.pipeline.intake.InboxFault;
import bandwright.pipeline.ledger.Ledger;
import bandwright.pipeline.outbox.Outbox;
import bandwright.pipeline.outbox.OutboxFault;
import bandwright.pipeline.review.Finding;
import bandwright.pipeline.review.Review;
import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code bandwright check}: every fault and every unconfirmed setting of rulebook and inbox; makes nothing. */
@Command(name = "check", mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
    @Parameters(arity = "0..*", paramLabel = "INBOX", descriptionKey = "run.inbox")
    private List<Path> inbox = List.of();

    @Option(names = "--out", paramLabel = "OUTBOX", descriptionKey = "spoiled.out")
    private Path outbox = Path.of("outbox");

    @Option(names = "--rules", paramLabel = "DIR", descriptionKey = "run.rules")
    private @Nullable Path rulesFolder;

    @Option(names = "--artwork", paramLabel = "DIR", descriptionKey = "check.artwork")
    private @Nullable Path artwork;

    private final Terminal terminal;
    private int toMend;

    CheckCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        try {
            Rulebook rules = Rulebook.read(Optional.ofNullable(rulesFolder));
            ArtworkFolder pictures = new ArtworkFolder(artwork, inbox);
            review(rules, pictures);
            if (!inbox.isEmpty()) {
                orders(rules, pictures);
            }
            terminal.answer(toMend == 0 ? Words.say("check.nothing") : Words.say("check.count", toMend));
            return toMend == 0 ? ExitCode.DONE : ExitCode.NEEDS_A_PERSON;
        } catch (RulebookFaults e) {
            e.faults().forEach(fault -> terminal.complain(fault.line()));
            terminal.complain(Words.say("check.rulebook-unusable", e.faults().size()));
            return ExitCode.NOTHING_PUBLISHED;
        } catch (InboxFault e) {
            terminal.complain(Words.say("check.stopped", e.getMessage(), e.cure()));
            return ExitCode.NOTHING_PUBLISHED;
        } catch (OutboxFault e) {
            terminal.complain(Words.say("check.stopped", e.getMessage(), e.cure()));
            return ExitCode.NOTHING_PUBLISHED;
        } catch (IOException e) {
            terminal.complain(Words.say("cli.artwork-closed", new ArtworkFolder(artwork, inbox).path()));
            return ExitCode.NOTHING_PUBLISHED;
        }
    }

    /** Without an inbox and an artwork folder nobody can say which pictures are missing. */
    private void review(Rulebook rules, ArtworkFolder pictures) throws IOException {
        boolean hasPictures = artwork != null || !inbox.isEmpty();
        List<Finding> findings =
                hasPictures ? Review.of(rules, ArtworkShelf.open(pictures.path())) : Review.withoutPictures(rules);
        findings.forEach(finding -> terminal.answer(finding.line()));
        toMend += (int) findings.stream().filter(Finding::mustBeMended).count();
    }

    private void orders(Rulebook rules, ArtworkFolder pictures) throws IOException, InboxFault {
        Flow.Request asked = new Flow.Request(Inbox.files(inbox), pictures.path(), Optional.empty());
        LocalDate today = LocalDate.now(rules.shop().timeZone().orElseGet(ZoneId::systemDefault));
        Run run;
        try (Ledger ledger = Ledger.look(outbox)) {
            run = Flow.decide(Outbox.peek(outbox, today, ledger.highestRun(today)), asked, rules, ledger, any -> {});
        }
        Summary summary = Summary.of(run);
        summary.refusals().forEach(terminal::answer);
        toMend += run.orders().unread().size();
        summary.heldByCode().forEach((code, lines) -> {
            terminal.answer(Words.say("check.held", code, lines.size()));
            lines.forEach(line -> terminal.answer(Words.say("check.held-row", line)));
        });
        toMend += run.held().size();
        terminal.answer(summary.wouldBe());
    }
}
