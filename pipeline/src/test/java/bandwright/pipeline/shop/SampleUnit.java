package bandwright.pipeline.shop;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.Orientation;
import bandwright.pipeline.size.Transfer;
import bandwright.rules.blanks.Band;
import bandwright.rules.units.Length;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** What a unit of a test is made of. */
public final class SampleUnit {
    private SampleUnit() {}

    /** The band that is as large as its transfer: all round it, without bleed or overlap. */
    public static Band bandOf(Transfer transfer) {
        return new Band(
                transfer.width(),
                transfer.height(),
                transfer.width(),
                Length.ZERO,
                Length.ZERO,
                Length.ZERO,
                List.of(),
                Optional.empty());
    }

    public static ArtworkFile artwork(String name, int width, int height) {
        ArtworkFile.Kind kind = name.endsWith(".jpg") ? ArtworkFile.Kind.JPEG : ArtworkFile.Kind.PNG;
        return new ArtworkFile(name, Path.of(name), 1000, kind, width, height, Orientation.TOP_LEFT);
    }
}
