package bandwright.pipeline.write.index;

import bandwright.pipeline.intake.InboxFile;
import java.util.List;

/** What was read, and what could not be, with the reason and the cure. */
record FilesRead(List<InboxFile> files) implements Section {
    @Override
    public String name() {
        return "files";
    }

    @Override
    public boolean isEmpty() {
        return files.isEmpty();
    }

    @Override
    public void writeTo(Html html) {
        Table table = Table.open(html, "index.files", "index.file", "index.state", "index.rows", "index.message");
        for (InboxFile file : files) {
            String name = file.file() + file.sheet().map(sheet -> ", " + sheet).orElse("");
            table.row(name, file.state().word(), Integer.toString(file.rows()), file.message());
        }
        table.close();
    }
}
