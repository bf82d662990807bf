package bandwright.pipeline.watch;

import bandwright.pipeline.Workbench;
import bandwright.pipeline.print.Handed;
import java.util.function.Consumer;

/** Who hears what the watcher does, a line each: never a buyer's word in it. */
public record Told(Consumer<String> line, Consumer<Workbench.Ended> published, Consumer<Handed> printed) {}
