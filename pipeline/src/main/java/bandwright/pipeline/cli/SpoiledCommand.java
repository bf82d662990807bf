package bandwright.pipeline.cli;

import bandwright.pipeline.ledger.Ledger;
import bandwright.pipeline.outbox.Outbox;
import bandwright.pipeline.outbox.OutboxFault;
import bandwright.rules.words.Words;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code bandwright spoiled}: units that were ruined; the next run of their order makes them again. */
@Command(name = "spoiled", mixinStandardHelpOptions = true)
final class SpoiledCommand implements Callable<Integer> {
    @Parameters(arity = "1..*", paramLabel = "UNIT", descriptionKey = "spoiled.units")
    private List<String> units = List.of();

    @Option(names = "--reason", paramLabel = "TEXT", required = true, descriptionKey = "spoiled.reason")
    private String reason = "";

    @Option(names = "--out", paramLabel = "OUTBOX", descriptionKey = "spoiled.out")
    private Path outbox = Path.of("outbox");

    private final Terminal terminal;

    SpoiledCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    @SuppressWarnings("try") // the outbox is held, not asked: nobody else may write the ledger meanwhile
    public Integer call() {
        if (reason.isBlank()) {
            terminal.complain(Words.say("cli.spoiled-why"));
            return ExitCode.WRONG_USAGE;
        }
        if (!Files.exists(outbox.resolve(Ledger.FILE))) {
            terminal.complain(Words.say("cli.no-ledger", outbox));
            return ExitCode.WRONG_USAGE;
        }
        List<String> ids = List.copyOf(
                new LinkedHashSet<>(units.stream().map(String::strip).toList()));
        try (Outbox place = Outbox.open(outbox, terminal::progress);
                Ledger ledger = Ledger.open(outbox)) {
            List<String> unknown = ledger.spoil(ids, LocalDate.now(ZoneId.systemDefault()), reason.strip());
            unknown.forEach(id -> terminal.complain(Words.say("cli.spoiled-unknown", id)));
            if (!unknown.isEmpty()) {
                return ExitCode.WRONG_USAGE;
            }
            ids.forEach(id -> terminal.answer(Words.say("cli.spoiled", id)));
            return ExitCode.DONE;
        } catch (OutboxFault e) {
            terminal.complain(Words.say("cli.nothing-marked", e.getMessage(), e.cure()));
            return ExitCode.NOTHING_PUBLISHED;
        }
    }
}
