package bandwright.pipeline;

import bandwright.pipeline.write.SheetFile;
import bandwright.pipeline.write.SheetFiles;
import bandwright.pipeline.write.sheets.check.SheetsCheck;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Whether what was written is what was meant: the records' sums, the files' sums, and every sheet opened again. */
final class ReadBack {
    private ReadBack() {}

    /** What differs, a plain line each; empty where the run may be published. */
    static List<String> mismatches(Run run, Path folder) throws IOException {
        List<String> mismatches = new ArrayList<>(Conservation.check(run));
        mismatches.addAll(Conservation.checkFiles(run, folder));
        for (SheetFile file : SheetFiles.of(run.tiled()).files()) {
            mismatches.addAll(SheetsCheck.differences(folder.resolve(file.name()), file));
        }
        return mismatches;
    }
}
