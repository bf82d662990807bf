package bandwright.pipeline.artwork;

import bandwright.pipeline.limits.Limits;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/** The files of the artwork folder and its sub-folders by name; dot files are none of the shop's pictures. */
final class ShelfListing {
    /**
     * A file of the folder.
     *
     * @param name with slashes, from the artwork folder on
     * @param outside a link that leads out of the folder, or nowhere
     */
    record Entry(String name, Path path, boolean outside) {
        /** The name without its folders and its ending. */
        String stem() {
            String file = name.substring(name.lastIndexOf('/') + 1);
            int dot = file.lastIndexOf('.');
            return dot < 0 ? file : file.substring(0, dot);
        }

        String folder() {
            return name.substring(0, Math.max(0, name.lastIndexOf('/')));
        }
    }

    private ShelfListing() {}

    /** All files, sorted by name; none where there is no such folder. */
    static List<Entry> of(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        Path root = folder.toRealPath();
        List<Entry> entries = new ArrayList<>();
        Files.walkFileTree(
                root,
                EnumSet.noneOf(java.nio.file.FileVisitOption.class),
                Limits.ARTWORK_DEPTH + 1,
                new SimpleFileVisitor<>() {
                    @Override
                    public FileVisitResult preVisitDirectory(Path dir, BasicFileAttributes attributes) {
                        return !dir.equals(root) && isHidden(dir)
                                ? FileVisitResult.SKIP_SUBTREE
                                : FileVisitResult.CONTINUE;
                    }

                    @Override
                    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                        if (!isHidden(file) && !attributes.isDirectory()) {
                            entries.add(entry(root, file, attributes));
                        }
                        return FileVisitResult.CONTINUE;
                    }

                    @Override
                    public FileVisitResult visitFileFailed(Path file, IOException e) {
                        return FileVisitResult.CONTINUE; // a folder that may not be entered: its files are missing
                    }
                });
        entries.sort(Comparator.comparing(Entry::name));
        return entries;
    }

    private static boolean isHidden(Path path) {
        return path.getFileName().toString().startsWith(".");
    }

    private static Entry entry(Path root, Path file, BasicFileAttributes attributes) {
        String name = StreamSupport.stream(root.relativize(file).spliterator(), false)
                .map(Path::toString)
                .collect(Collectors.joining("/"));
        if (!attributes.isSymbolicLink()) {
            return new Entry(name, file, false);
        }
        try {
            Path real = file.toRealPath();
            return new Entry(name, real, !real.startsWith(root));
        } catch (IOException e) {
            return new Entry(name, file, true);
        }
    }
}
