package bandwright.pipeline.outbox;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Puts a folder's list of names on the disk, so that a power cut does not undo a new file or a rename. */
final class FolderSync {
    private FolderSync() {}

    /** Windows and some network drives refuse to sync a folder; nothing better can be done there, so it is left out. */
    static void sync(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            return;
        }
    }
}
