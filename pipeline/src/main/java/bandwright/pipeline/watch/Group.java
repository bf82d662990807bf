package bandwright.pipeline.watch;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Drops that go into one run together: all that are new; all that were taken before; each folder that brought its own
 * pictures for itself. Two files of one name are never in one run, as a held row says the name that it is from.
 */
record Group(List<Drop> drops) {
    Group {
        drops = List.copyOf(drops);
    }

    /** Groups, the new ones first. */
    static List<Group> of(List<Drop> drops) {
        List<Group> groups = new ArrayList<>();
        List<Drop> fresh =
                drops.stream().filter(drop -> drop.before().isEmpty()).toList();
        List<Drop> known =
                drops.stream().filter(drop -> drop.before().isPresent()).toList();
        for (List<Drop> all : List.of(fresh, known)) {
            groups.addAll(sorted(all));
        }
        return groups;
    }

    private static List<Group> sorted(List<Drop> drops) {
        List<List<Drop>> groups = new ArrayList<>();
        for (Drop drop : drops) {
            groups.stream()
                    .filter(group -> goesWith(group, drop))
                    .findFirst()
                    .orElseGet(() -> opened(groups))
                    .add(drop);
        }
        return groups.stream().map(Group::new).toList();
    }

    private static boolean goesWith(List<Drop> group, Drop drop) {
        Set<String> names = new HashSet<>(drop.names());
        return drop.ownArtwork().isEmpty()
                && group.stream().noneMatch(other -> other.ownArtwork().isPresent())
                && group.stream().flatMap(other -> other.names().stream()).noneMatch(names::contains);
    }

    private static List<Drop> opened(List<List<Drop>> groups) {
        List<Drop> group = new ArrayList<>();
        groups.add(group);
        return group;
    }

    List<Path> files() {
        return drops.stream().flatMap(drop -> drop.files().stream()).toList();
    }

    List<String> digests() {
        return drops.stream().flatMap(drop -> drop.digests().stream()).toList();
    }

    Optional<Path> ownArtwork() {
        return drops.stream().flatMap(drop -> drop.ownArtwork().stream()).findFirst();
    }

    /** The drop of the same contents that came first. */
    static Optional<Drop> twinOf(Drop drop, List<Drop> earlier) {
        return earlier.stream()
                .filter(other -> other.digests().equals(drop.digests())
                        && !drop.digests().isEmpty())
                .filter(other ->
                        other.ownArtwork().isPresent() == drop.ownArtwork().isPresent())
                .findFirst();
    }
}
