package bandwright.pipeline.write.sheets;

import bandwright.pipeline.Run;
import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.size.Layer;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.tile.Sheet;
import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.Output;
import bandwright.pipeline.write.SheetFile;
import bandwright.pipeline.write.SheetFiles;
import bandwright.pipeline.write.pdf.PreparedPictures;
import bandwright.rules.Rulebook;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

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
                .map(file -> new OutFile(file.name(), out -> {
                    prepared.ahead(artworks(file));
                    SheetWriter.write(file, run.id(), rules.shop(), prepared, out);
                }))
                .toList();
    }

    private static Set<ArtworkFile> artworks(SheetFile file) {
        Set<ArtworkFile> artworks = new LinkedHashSet<>();
        for (Sheet sheet : file.sheets()) {
            for (Placed placed : sheet.placed()) {
                for (Layer layer : placed.unit().transfer().layers()) {
                    if (layer instanceof Layer.Picture picture) {
                        artworks.add(picture.artwork());
                    }
                }
            }
        }
        return artworks;
    }
}
