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
import bandwright.rules.blanks.Sector;
import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
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
                    Needed needed = Needed.of(file, rules.shop(), prepared);
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
        static Needed of(SheetFile file, Shop shop, PreparedPictures prepared) throws IOException {
            Needed needed = new Needed(new LinkedHashSet<>(), new LinkedHashSet<>());
            List<Transfer> transfers = file.sheets().stream()
                    .flatMap(sheet -> sheet.placed().stream())
                    .map(placed -> placed.unit().transfer())
                    .distinct()
                    .toList();
            for (Transfer transfer : transfers) {
                for (Layer layer : transfer.layers()) {
                    if (layer instanceof Layer.Picture picture) {
                        needed.add(picture, transfer.sector(), shop, prepared);
                    }
                }
            }
            return needed;
        }

        /** Straight vector artwork needs no preparing, nor does what is bent as outlines. */
        private void add(Layer.Picture picture, Optional<Sector> sector, Shop shop, PreparedPictures prepared)
                throws IOException {
            if (sector.isEmpty()) {
                if (!picture.artwork().kind().isVector()) {
                    artworks.add(picture.artwork());
                }
            } else if (prepared.shapes(picture.artwork()).isEmpty()) {
                bendings.add(Bending.of(picture, sector.get(), shop.warpPpi()));
            }
        }
    }
}
