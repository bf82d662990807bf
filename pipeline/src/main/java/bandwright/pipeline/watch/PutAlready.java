package bandwright.pipeline.watch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Whether a drop's contents lie in the folder of their run already, under whatever name. */
final class PutAlready {
    private PutAlready() {}

    static boolean isThere(Path inbox, Drop drop) throws IOException {
        Path done = inbox.resolve(DropFolder.DONE).resolve(drop.before().orElseThrow());
        if (!Files.isDirectory(done, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        try (Stream<Path> all = Files.walk(done, 2)) {
            List<Path> files = all.filter(path -> Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS))
                    .toList();
            for (int i = 0; i < drop.digests().size(); i++) {
                if (!hasOne(
                        files, Files.size(drop.files().get(i)), drop.digests().get(i))) {
                    return false;
                }
            }
            return true;
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static boolean hasOne(List<Path> files, long bytes, String digest) throws IOException {
        for (Path file : files) {
            if (Files.size(file) == bytes && Drop.digest(file).equals(digest)) {
                return true;
            }
        }
        return false;
    }
}
