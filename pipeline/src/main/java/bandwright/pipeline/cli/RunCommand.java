package bandwright.pipeline.cli;

import bandwright.pipeline.Flow;
import bandwright.pipeline.Run;
import bandwright.pipeline.RunId;
import bandwright.pipeline.Workbench;
import bandwright.pipeline.intake.Inbox;
import bandwright.pipeline.intake.InboxFault;
import bandwright.pipeline.ledger.Ledger;
import bandwright.pipeline.outbox.Outbox;
import bandwright.pipeline.outbox.OutboxFault;
import bandwright.pipeline.print.HandOver;
import bandwright.pipeline.print.Lp;
import bandwright.pipeline.print.Printing;
import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import bandwright.rules.paper.Paper;
import bandwright.rules.table.Nearest;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code bandwright run}: an inbox into a run's folder. */
@Command(name = "run", mixinStandardHelpOptions = true)
final class RunCommand implements Callable<Integer> {
    @Parameters(arity = "1..*", paramLabel = "INBOX", descriptionKey = "run.inbox")
    private List<Path> inbox = List.of();

    @Option(names = "--out", paramLabel = "OUTBOX", descriptionKey = "run.out")
    private Path outbox = Path.of("outbox");

    @Option(names = "--rules", paramLabel = "DIR", descriptionKey = "run.rules")
    private @Nullable Path rulesFolder;

    @Option(names = "--artwork", paramLabel = "DIR", descriptionKey = "run.artwork")
    private @Nullable Path artwork;

    @Option(names = "--date", paramLabel = "YYYY-MM-DD", descriptionKey = "run.date", converter = DayText.class)
    private @Nullable LocalDate date;

    @Option(names = "--paper", paramLabel = "ID", descriptionKey = "run.paper")
    private @Nullable String paper;

    @Option(names = "--print", descriptionKey = "run.print")
    private boolean isPrinted;

    @Option(names = "--dry-run", descriptionKey = "run.dry-run")
    private boolean isDryRun;

    @Spec
    private CommandSpec spec;

    private final Terminal terminal;

    RunCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        try {
            Rulebook rules = Rulebook.read(Optional.ofNullable(rulesFolder));
            Flow.Request asked = new Flow.Request(Inbox.files(inbox), artworkFolder(), paperOf(rules));
            return isDryRun ? dryRun(asked, rules) : run(asked, rules);
        } catch (RulebookFaults e) {
            e.faults().forEach(fault -> terminal.complain(fault.line()));
            terminal.complain(Words.say("cli.rulebook-unusable", e.faults().size()));
            return ExitCode.NOTHING_PUBLISHED;
        } catch (InboxFault e) {
            terminal.complain(Words.say("cli.nothing-made", e.getMessage(), e.cure()));
            return ExitCode.NOTHING_PUBLISHED;
        } catch (IOException e) {
            terminal.complain(Words.say("cli.artwork-closed", artworkFolder()));
            return ExitCode.NOTHING_PUBLISHED;
        } catch (OutboxFault e) {
            terminal.complain(Words.say("cli.nothing-made", e.getMessage(), e.cure()));
            return ExitCode.NOTHING_PUBLISHED;
        }
    }

    private int run(Flow.Request asked, Rulebook rules) throws IOException {
        LocalDate today = today(rules);
        try (Outbox place = Outbox.open(outbox, terminal::progress);
                Ledger ledger = Ledger.open(outbox)) {
            HandOver handOver = new HandOver(ledger, outbox, Lp.OF_THE_SYSTEM);
            AtThePrinter printer = new AtThePrinter(terminal);
            handOver.leftovers(printer);
            Optional<Printing> printing =
                    Optional.of(new Printing(handOver, printer)).filter(any -> isPrinted);
            Workbench bench = new Workbench(place, ledger, rules, today, printing);
            Workbench.Ended ended = bench.run(asked, List.of(), this::refusals, this::progress);
            Summary summary = Summary.of(ended.run());
            if (ended.run().orders().isNothingReadable()) {
                terminal.complain(Words.say("cli.nothing-readable"));
                return ExitCode.NOTHING_PUBLISHED;
            }
            if (ended.folder().isEmpty()) {
                terminal.answer(Words.say("cli.nothing-new", ended.run().held().size()));
                return printer.exitCode(summary.exitCode());
            }
            if (terminal.isLive()) {
                summary.heldLines().forEach(terminal::complain);
            }
            terminal.answer(summary.published(ended.folder().get()));
            return printer.exitCode(summary.exitCode());
        }
    }

    private int dryRun(Flow.Request asked, Rulebook rules) throws IOException {
        LocalDate today = today(rules);
        Run run;
        try (Ledger ledger = Ledger.look(outbox)) {
            RunId id = Outbox.peek(outbox, today, ledger.highestRun(today));
            run = Flow.decide(id, asked, rules, ledger, this::progress);
        }
        Summary summary = Summary.of(run);
        refusals(run);
        if (run.orders().isNothingReadable()) {
            terminal.complain(Words.say("cli.nothing-readable"));
            return ExitCode.NOTHING_PUBLISHED;
        }
        summary.heldLines().forEach(terminal::answer);
        terminal.answer(summary.wouldBe());
        return summary.exitCode();
    }

    private void refusals(Run run) {
        Summary.of(run).refusals().forEach(terminal::complain);
    }

    private void progress(Flow.Stage stage) {
        terminal.progress(Words.say("cli.stage." + stage.name().toLowerCase(Locale.ROOT)));
    }

    private LocalDate today(Rulebook rules) {
        return date != null ? date : LocalDate.now(rules.shop().timeZone().orElseGet(ZoneId::systemDefault));
    }

    private Path artworkFolder() {
        return new ArtworkFolder(artwork, inbox).path();
    }

    private Optional<String> paperOf(Rulebook rules) {
        if (paper == null) {
            return Optional.empty();
        }
        Optional<Paper> known = rules.papers().find(paper);
        boolean isTaken = known.isPresent()
                && rules.printers().list().stream().anyMatch(printer -> printer.papers()
                        .contains(known.get().id()));
        if (!isTaken) {
            List<String> ids = rules.papers().list().stream().map(Paper::id).toList();
            String near = Nearest.of(paper, ids).orElse(String.join(", ", ids));
            throw new ParameterException(spec.commandLine(), Words.say("cli.no-such-paper", paper, near));
        }
        return known.map(Paper::id);
    }
}
