package bandwright.pipeline.cli;

import bandwright.pipeline.forget.Forgetting;
import bandwright.pipeline.forget.Trace;
import bandwright.pipeline.forget.Traces;
import bandwright.pipeline.ledger.Ledger;
import bandwright.pipeline.outbox.Outbox;
import bandwright.pipeline.outbox.OutboxFault;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code bandwright forget}: a buyer asks that what is known of an order be deleted. */
@Command(name = "forget", mixinStandardHelpOptions = true)
final class ForgetCommand implements Callable<Integer> {
    @Parameters(paramLabel = "ORDER", descriptionKey = "find.order")
    private String order = "";

    @Option(names = "--out", paramLabel = "OUTBOX", descriptionKey = "spoiled.out")
    private Path outbox = Path.of("outbox");

    @Option(names = "--inbox", paramLabel = "INBOX", descriptionKey = "forget.inbox")
    private @Nullable Path inbox;

    @Option(names = "--artwork", paramLabel = "DIR", descriptionKey = "run.artwork")
    private @Nullable Path artwork;

    @Option(names = "--delete", descriptionKey = "forget.delete")
    private boolean deletes;

    private final Terminal terminal;

    ForgetCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    @SuppressWarnings("try") // the outbox is held, not asked: no run may write there meanwhile
    public Integer call() {
        order = order.strip();
        if (order.isEmpty() || !Files.isDirectory(outbox) || (inbox != null && !Files.isDirectory(inbox))) {
            terminal.complain(Words.say("forget.where", order));
            return ExitCode.WRONG_USAGE;
        }
        try (Outbox place = Outbox.open(outbox, terminal::progress);
                Ledger ledger = Ledger.open(outbox)) {
            return forget(ledger);
        } catch (OutboxFault e) {
            terminal.complain(Words.say("forget.nothing", e.getMessage(), e.cure()));
            return ExitCode.NOTHING_PUBLISHED;
        } catch (IOException e) {
            terminal.complain(Words.say("forget.failed", String.valueOf(e.getMessage())));
            return ExitCode.NOTHING_PUBLISHED;
        }
    }

    private int forget(Ledger ledger) throws IOException {
        Set<String> runs = ledger.runsOf(order);
        List<Trace> traces = Traces.of(order, runs, outbox, Optional.ofNullable(inbox), Optional.ofNullable(artwork));
        boolean isKnown = !runs.isEmpty()
                || traces.stream()
                        .anyMatch(trace -> trace.kind() != Trace.Kind.OLD_LEDGER && trace.kind() != Trace.Kind.UNREAD);
        if (!isKnown) {
            terminal.complain(Words.say("forget.unknown", order));
            return ExitCode.WRONG_USAGE;
        }
        terminal.answer(Words.say("forget.ledger", order, ledger.forget(order)));
        boolean isLeft = false;
        for (Trace trace : traces) {
            boolean goes = deletes && trace.kind().mayGo();
            if (goes) {
                Forgetting.delete(trace, order);
            }
            isLeft |= !goes;
            String done = goes ? "forget.deleted." : "forget.holds.";
            terminal.answer(Words.say(done + trace.kind().word(), trace.place()));
        }
        terminal.answer(Words.say("forget.stays"));
        if (inbox == null) {
            terminal.answer(Words.say("forget.no-inbox"));
        }
        if (isLeft && !deletes) {
            terminal.answer(Words.say("forget.with-delete", order));
        }
        return isLeft ? ExitCode.NEEDS_A_PERSON : ExitCode.DONE;
    }
}
