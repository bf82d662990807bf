package bandwright.pipeline.print;

import bandwright.pipeline.Run;
import java.nio.file.Path;
import java.util.function.Consumer;

/**
 * A run's way to the printer.
 *
 * @param told hears what became of each file
 */
public record Printing(HandOver handOver, Consumer<Handed> told) {
    /** Before the run is published. */
    public void promise(Run run) {
        handOver.promise(run);
    }

    /** After it was published in that folder. */
    public void send(Run run, Path folder) {
        handOver.send(run, folder, told);
    }
}
