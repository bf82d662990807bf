package bandwright.pipeline.write.sheets;

import bandwright.pipeline.Run;
import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.size.Layer;
import bandwright.pipeline.size.Transfer;
import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.Output;
import bandwright.pipeline.write.SheetFile;
import bandwright.pipeline.write.SheetFiles;
import bandwright.pipeline.write.pdf.Bending;
import bandwright.pipeline.write.pdf.PreparedPictures;
import bandwright.rules.Rulebook;
import bandwright.rules.Shop;
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
                    Needed needed = Needed.of(file, rules.shop());
                    prepared.ahead(
                            needed.artworks(),
                            needed.bendings(),
                            file.room().printer().profile());
                    SheetWriter.write(file, run.id(), rules.shop(), prepared, out);
                }))
                .toList();
    }

    /** The pictures of a file, each once. */
    private record Needed(Set<ArtworkFile> artworks, Set<Bending> bendings) {
        static Needed of(SheetFile file, Shop shop) {
            Needed needed = new Needed(new LinkedHashSet<>(), new LinkedHashSet<>());
            file.sheets().stream()
                    .flatMap(sheet -> sheet.placed().stream())
                    .map(placed -> placed.unit().transfer())
                    .distinct()
                    .forEach(transfer -> needed.add(transfer, shop));
            return needed;
        }

        private void add(Transfer transfer, Shop shop) {
            for (Layer layer : transfer.layers()) {
                if (layer instanceof Layer.Picture picture) {
                    transfer.sector()
                            .ifPresentOrElse(
                                    sector -> bendings.add(Bending.of(picture, sector, shop.warpPpi())),
                                    () -> artworks.add(picture.artwork()));
                }
            }
        }
    }
}
