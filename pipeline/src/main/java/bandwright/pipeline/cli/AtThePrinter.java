package bandwright.pipeline.cli;

import bandwright.pipeline.print.Handed;
import java.util.function.Consumer;

/** Says what became of sheets at the printer, and remembers whether one waits for a person. */
final class AtThePrinter implements Consumer<Handed> {
    private final Terminal terminal;
    private boolean isAPersonNeeded;

    AtThePrinter(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public void accept(Handed handed) {
        if (handed.isAPersonNeeded()) {
            isAPersonNeeded = true;
            terminal.complain(handed.line());
        } else {
            terminal.answer(handed.line());
        }
    }

    /** What the command ends with, if it would end so without a printer. */
    int exitCode(int otherwise) {
        return isAPersonNeeded ? ExitCode.NEEDS_A_PERSON : otherwise;
    }
}
