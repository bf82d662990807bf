package bandwright.pipeline.write;

import bandwright.pipeline.Run;
import bandwright.rules.Rulebook;
import java.util.List;

/** One kind of output: what files it makes of a run. */
@FunctionalInterface
public interface Output {
    List<OutFile> files(Run run, Rulebook rules);
}
