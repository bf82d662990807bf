package bandwright.pipeline.cli;

import bandwright.pipeline.ledger.Ledger;
import bandwright.pipeline.outbox.OutboxFault;
import bandwright.pipeline.past.PastPiece;
import bandwright.rules.words.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code bandwright find}: what became of every piece of an order. */
@Command(name = "find", mixinStandardHelpOptions = true)
final class FindCommand implements Callable<Integer> {
    @Parameters(paramLabel = "ORDER", descriptionKey = "find.order")
    private String order = "";

    @Option(names = "--out", paramLabel = "OUTBOX", descriptionKey = "spoiled.out")
    private Path outbox = Path.of("outbox");

    private final Terminal terminal;

    FindCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        try (Ledger ledger = Ledger.look(outbox)) {
            List<PastPiece> pieces = ledger.list(order.strip());
            if (pieces.isEmpty()) {
                terminal.complain(Words.say("cli.find-unknown", order.strip(), outbox));
                return ExitCode.WRONG_USAGE;
            }
            pieces.forEach(piece -> terminal.answer(line(piece, pieces)));
            return ExitCode.DONE;
        } catch (OutboxFault e) {
            terminal.complain(Words.say("cli.nothing-found", e.getMessage(), e.cure()));
            return ExitCode.NOTHING_PUBLISHED;
        }
    }

    private static String line(PastPiece piece, List<PastPiece> all) {
        String what = piece.what().isEmpty() ? piece.blank() : piece.what();
        String site = piece.order().site().isEmpty()
                ? ""
                : Words.say("cli.find-site", piece.order().site());
        String line = Words.say("cli.find", piece.id(), what + site, piece.run(), piece.sheet(), piece.load());
        String remade = all.stream()
                .filter(other -> other.remakeOf().equals(Optional.of(piece.id())))
                .findFirst()
                .map(other -> Words.say("cli.find-remade", other.id()))
                .orElse(Words.say("cli.find-not-remade"));
        return line
                + piece.spoiled()
                        .map(spoiled -> Words.say("cli.find-spoiled", spoiled.day(), spoiled.reason()) + remade)
                        .orElse("");
    }
}
