package bandwright.pipeline.cli;

import bandwright.rules.words.Words;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.logging.Level;
import java.util.logging.LogManager;
import java.util.logging.Logger;
import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The command line: parses, calls the flow, prints, and says by its exit code how it went. */
@Command(
        name = "bandwright",
        subcommands = {
            RunCommand.class,
            WatchCommand.class,
            CheckCommand.class,
            BandCommand.class,
            StripCommand.class,
            RulerCommand.class,
            TrialCommand.class,
            SpoiledCommand.class,
            FindCommand.class,
            ForgetCommand.class,
            GenerateCompletion.class
        },
        mixinStandardHelpOptions = true,
        version = "bandwright 0.1.0")
public final class Main implements Runnable {
    /** Libraries log through it; a shop owner never wants to read that. Held, or it would be collected and speak again. */
    private static final Logger LIBRARIES = Logger.getLogger("");

    @Option(names = "--verbose", scope = ScopeType.INHERIT, descriptionKey = "cli.verbose")
    private boolean isVerbose;

    @Spec
    private CommandSpec spec;

    private Main() {}

    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, false, StandardCharsets.UTF_8);
        int code = run(out, err, isTerminal(), args);
        out.flush();
        err.flush();
        // Not a return from main: a library's idle thread must not keep the process alive.
        System.exit(code);
    }

    /** Java 17 has a console only where both ends are a terminal. */
    @SuppressWarnings("SystemConsoleNull") // later Javas are asked by the same call whether it is one
    private static boolean isTerminal() {
        return System.console() != null;
    }

    /** The whole program, without a process: what it prints and the exit code. */
    static int run(PrintWriter out, PrintWriter err, boolean isLive, String... args) {
        LogManager.getLogManager().reset();
        LIBRARIES.setLevel(Level.OFF);
        Main main = new Main();
        CommandLine line = new CommandLine(main, new Commands(new Terminal(out, err, isLive)));
        line.setResourceBundle(new WordsBundle());
        line.setOut(out);
        line.setErr(err);
        line.setParameterExceptionHandler(Main::wrongUsage);
        line.setExecutionExceptionHandler((e, command, parsed) -> main.unforeseen(e, command));
        return line.execute(args);
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), Words.say("cli.no-command"));
    }

    private static int wrongUsage(ParameterException e, String[] args) {
        PrintWriter err = e.getCommandLine().getErr();
        err.println(Terminal.harmless("bandwright: " + e.getMessage()));
        err.println(
                Words.say("cli.see-help", e.getCommandLine().getCommandSpec().qualifiedName()));
        err.flush();
        return ExitCode.WRONG_USAGE;
    }

    /** Our own bug, or a world that no code of ours foresaw: still one line, and nothing was published. */
    private int unforeseen(Exception e, CommandLine command) {
        PrintWriter err = command.getErr();
        err.println(Terminal.harmless(Words.say("cli.unforeseen", String.valueOf(e.getMessage()))));
        if (isVerbose) {
            e.printStackTrace(err);
        }
        err.flush();
        return ExitCode.NOTHING_PUBLISHED;
    }
}
