package bandwright.pipeline.watch;

import bandwright.pipeline.ledger.Ledger;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/**
 * A drop that is about to be taken.
 *
 * @param digests one an order file of it
 * @param before the run that was made from these very contents
 */
record Drop(Sighting sighting, List<String> digests, Optional<String> before) {
    Drop {
        digests = List.copyOf(digests);
    }

    static Drop read(Sighting sighting, Ledger ledger) throws IOException {
        List<String> digests = new ArrayList<>();
        for (Path file : sighting.last().orderFiles()) {
            digests.add(digest(file));
        }
        List<Optional<String>> runs = digests.stream().map(ledger::findRunOf).toList();
        boolean isKnown = !runs.isEmpty() && runs.stream().allMatch(Optional::isPresent);
        return new Drop(sighting, digests, isKnown ? runs.get(0) : Optional.empty());
    }

    List<Path> files() {
        return sighting.last().orderFiles();
    }

    List<String> names() {
        return files().stream().map(file -> DropNames.lower(Glance.name(file))).toList();
    }

    /** The pictures that a dropped folder brought along. */
    Optional<Path> ownArtwork() {
        return Optional.of(sighting.path().resolve("artwork"))
                .filter(folder -> Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS));
    }

    static String digest(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS);
                DigestInputStream read = new DigestInputStream(in, MessageDigest.getInstance("SHA-256"))) {
            read.transferTo(OutputStream.nullOutputStream());
            return HexFormat.of().formatHex(read.getMessageDigest().digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
