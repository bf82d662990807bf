package bandwright.pipeline.cli;

import bandwright.pipeline.outbox.OutboxFault;
import bandwright.pipeline.outbox.OwnOnly;
import bandwright.pipeline.watch.Asked;
import bandwright.pipeline.watch.Pace;
import bandwright.pipeline.watch.Told;
import bandwright.pipeline.watch.Waking;
import bandwright.pipeline.watch.Watch;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code bandwright watch}: a drop folder that is looked after until somebody says stop. */
@Command(name = "watch", mixinStandardHelpOptions = true)
final class WatchCommand implements Callable<Integer> {
    @Parameters(paramLabel = "INBOX", descriptionKey = "watch.inbox")
    private Path inbox = Path.of("inbox");

    @Option(names = "--out", paramLabel = "OUTBOX", descriptionKey = "run.out")
    private Path outbox = Path.of("outbox");

    @Option(names = "--rules", paramLabel = "DIR", descriptionKey = "run.rules")
    private @Nullable Path rulesFolder;

    @Option(names = "--artwork", paramLabel = "DIR", descriptionKey = "run.artwork")
    private @Nullable Path artwork;

    @Option(names = "--paper", paramLabel = "ID", descriptionKey = "run.paper")
    private @Nullable String paper;

    @Option(names = "--at", paramLabel = "HH:MM", descriptionKey = "watch.at", converter = DayTime.class)
    private @Nullable LocalTime at;

    @Option(names = "--quiet", paramLabel = "TIME", descriptionKey = "watch.quiet", converter = WaitText.class)
    private Duration quiet = Duration.ofSeconds(10);

    @Option(names = "--poll", paramLabel = "TIME", descriptionKey = "watch.poll", converter = WaitText.class)
    private Duration poll = Duration.ofSeconds(5);

    @Option(names = "--print", descriptionKey = "run.print")
    private boolean isPrinted;

    private final Terminal terminal;

    WatchCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws InterruptedException {
        if (poll.isZero()) {
            terminal.complain(Words.say("watch.no-poll"));
            return ExitCode.WRONG_USAGE;
        }
        if (whole(inbox).startsWith(whole(outbox))) {
            terminal.complain(Words.say("watch.inbox-in-outbox", inbox, outbox));
            return ExitCode.WRONG_USAGE;
        }
        Optional<String> noOutbox = makeOutbox();
        if (noOutbox.isPresent()) {
            terminal.complain(noOutbox.get());
            return ExitCode.NOTHING_PUBLISHED;
        }
        Asked asked = new Asked(
                inbox,
                outbox,
                Optional.ofNullable(rulesFolder),
                Optional.ofNullable(artwork),
                Optional.ofNullable(paper),
                isPrinted,
                new Pace(poll, quiet, Optional.ofNullable(at)));
        Told told = new Told(
                terminal::answer,
                ended -> terminal.answer(
                        Summary.of(ended.run()).published(ended.folder().orElseThrow())),
                new AtThePrinter(terminal));
        return watch(new Watch(asked, InstantSource.system(), ZoneId.systemDefault(), told));
    }

    /** Here, as a symbolic link is followed by whoever opens it. */
    private static Path whole(Path folder) {
        try {
            return folder.toRealPath();
        } catch (IOException e) {
            return folder.toAbsolutePath().normalize();
        }
    }

    private Optional<String> makeOutbox() {
        try {
            if (!Files.isDirectory(outbox)) {
                Files.createDirectories(outbox, OwnOnly.folder());
            }
            return Optional.empty();
        } catch (IOException e) {
            OutboxFault fault = OutboxFault.of("outbox-no-permission", outbox);
            return Optional.of(Words.say("cli.nothing-made", fault.getMessage(), fault.cure()));
        }
    }

    private int watch(Watch watch) throws InterruptedException {
        Optional<String> refusal = watch.refusal();
        if (refusal.isPresent()) {
            terminal.complain(Words.say("watch.refused", refusal.get()));
            return ExitCode.NOTHING_PUBLISHED;
        }
        CountDownLatch ended = new CountDownLatch(1);
        Waking waking = new Waking(inbox);
        // What is being made is finished; then the process ends well, as it was asked to end.
        Thread stop = new Thread(() -> stop(watch, waking, ended), "stop");
        Runtime.getRuntime().addShutdownHook(stop);
        try {
            terminal.answer(Words.say("watch.begins", inbox, outbox));
            while (!watch.isStopping()) {
                watch.look();
                waking.await(poll);
            }
        } finally {
            watch.close();
            waking.close();
            terminal.answer(Words.say("watch.ends"));
            forget(stop);
            ended.countDown();
        }
        return ExitCode.DONE;
    }

    /** Without it an end of another kind would pass for a good one. */
    private static void forget(Thread stop) {
        try {
            Runtime.getRuntime().removeShutdownHook(stop);
        } catch (IllegalStateException stopping) {
            return; // it is running: it waits for the end and then ends the process
        }
    }

    private static void stop(Watch watch, Waking waking, CountDownLatch ended) {
        watch.stop();
        waking.close();
        try {
            ended.await();
            Runtime.getRuntime().halt(ExitCode.DONE);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
