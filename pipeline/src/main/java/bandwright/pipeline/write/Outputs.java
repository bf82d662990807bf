package bandwright.pipeline.write;

import bandwright.pipeline.Run;
import bandwright.pipeline.write.json.RunJson;
import bandwright.pipeline.write.workbook.HeldWorkbook;
import bandwright.pipeline.write.workbook.OrdersWorkbook;
import bandwright.rules.Rulebook;
import java.util.List;

/** Everything that a run puts into its folder. A new kind of output is one folder and one line here. */
public final class Outputs {
    private static final List<Output> ALL = List.of(new HeldWorkbook(), new OrdersWorkbook(), new RunJson());

    private Outputs() {}

    /** The files of a run, by kind; run.json last, as machines look for it. */
    public static List<OutFile> files(Run run, Rulebook rules) {
        return ALL.stream().flatMap(output -> output.files(run, rules).stream()).toList();
    }
}
