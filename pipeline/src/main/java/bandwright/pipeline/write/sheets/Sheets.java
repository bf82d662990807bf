package bandwright.pipeline.write.sheets;

import bandwright.pipeline.Run;
import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.Output;
import bandwright.rules.Rulebook;
import java.util.List;

/** The printer's files: every transfer at true size and mirrored once, with its label and the marks in the waste. */
public final class Sheets implements Output {
    @Override
    public List<OutFile> files(Run run, Rulebook rules) {
        return SheetFiles.of(run.tiled()).files().stream()
                .map(file -> new OutFile(file.name(), out -> SheetWriter.write(file, run.id(), rules.shop(), out)))
                .toList();
    }
}
