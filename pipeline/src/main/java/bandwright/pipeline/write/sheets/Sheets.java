package bandwright.pipeline.write.sheets;

import bandwright.pipeline.Run;
import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.Output;
import bandwright.pipeline.write.SheetFiles;
import bandwright.pipeline.write.pdf.PreparedPictures;
import bandwright.rules.Rulebook;
import java.util.List;

/** The printer's files: every transfer at true size and mirrored once, with its label and the marks in the waste. */
public final class Sheets implements Output {
    private final PreparedPictures prepared;

    /**
     * The sheets of one run.
     *
     * @param prepared the run's pictures, whose scratch folder lasts until the files are written
     */
    public Sheets(PreparedPictures prepared) {
        this.prepared = prepared;
    }

    @Override
    public List<OutFile> files(Run run, Rulebook rules) {
        return SheetFiles.of(run.tiled()).files().stream()
                .map(file ->
                        new OutFile(file.name(), out -> SheetWriter.write(file, run.id(), rules.shop(), prepared, out)))
                .toList();
    }
}
