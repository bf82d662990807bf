package bandwright.pipeline.write;

import bandwright.pipeline.Run;
import bandwright.pipeline.write.checklist.PressChecklist;
import bandwright.pipeline.write.index.IndexPage;
import bandwright.pipeline.write.json.RunJson;
import bandwright.pipeline.write.pdf.PreparedPictures;
import bandwright.pipeline.write.picklist.PickList;
import bandwright.pipeline.write.proofs.Proofs;
import bandwright.pipeline.write.sheets.Sheets;
import bandwright.pipeline.write.slips.PackingSlips;
import bandwright.pipeline.write.thumb.Thumbnails;
import bandwright.pipeline.write.workbook.HeldWorkbook;
import bandwright.pipeline.write.workbook.OrdersWorkbook;
import bandwright.rules.Rulebook;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Everything that a run puts into its folder. A new kind of output is one folder and one line here. */
public final class Outputs {
    private Outputs() {}

    private static List<Output> all(PreparedPictures pictures, Thumbnails thumbnails) {
        return List.of(
                new Sheets(pictures),
                new PressChecklist(thumbnails),
                new PickList(),
                new PackingSlips(thumbnails),
                new HeldWorkbook(),
                new OrdersWorkbook(),
                new Proofs(),
                new RunJson());
    }

    /**
     * The files of a run, by kind; last the page that names the others.
     *
     * @param scratch an empty folder that lasts until the files are written
     */
    public static List<OutFile> files(Run run, Rulebook rules, Path scratch) {
        Thumbnails thumbnails = Thumbnails.of(run);
        thumbnails.begin(); // the lists take them, by when the sheets are written
        List<OutFile> files = new ArrayList<>();
        for (Output output : all(new PreparedPictures(scratch), thumbnails)) {
            files.addAll(output.files(run, rules));
        }
        List<String> names = files.stream().map(OutFile::name).toList();
        files.add(IndexPage.file(run, rules, thumbnails, names));
        return List.copyOf(files);
    }
}
