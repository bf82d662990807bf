package bandwright.pipeline.intake;

import bandwright.rules.orders.Site;
import bandwright.rules.orders.Sites;
import bandwright.rules.table.Names;
import java.text.Normalizer;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** The sites as intake asks for them: by a file's name, by a cell, and the one for everything that no other takes. */
final class SiteList {
    /** What the built-in table says of it: a shop that names its own sites only still doesn't print what is cancelled. */
    private static final List<String> SKIP = List.of("Cancelled", "Canceled", "Refunded", "Voided");

    private static final Site PLAIN =
            new Site("", "", OptionalInt.empty(), Optional.empty(), '.', false, SKIP, "", List.of(), false, "");

    private final List<Site> all;
    private final Site plain;

    SiteList(Sites sites) {
        Optional<Site> unnamed =
                sites.list().stream().filter(site -> site.name().isBlank()).findFirst();
        this.plain = unnamed.orElse(PLAIN);
        this.all = unnamed.isPresent() ? sites.list() : append(sites.list(), PLAIN);
    }

    private static List<Site> append(List<Site> sites, Site last) {
        return Stream.concat(sites.stream(), Stream.of(last)).toList();
    }

    List<Site> all() {
        return all;
    }

    /** The site with the empty name. */
    Site plain() {
        return plain;
    }

    /** The first site whose pattern, with * and ?, fits the file's name. */
    Optional<Site> findByFile(String file) {
        return all.stream()
                .filter(site -> !site.files().isBlank() && fits(site.files(), file))
                .findFirst();
    }

    Optional<Site> findByName(String name) {
        return all.stream().filter(site -> Names.same(site.name(), name)).findFirst();
    }

    /** A site that says no skip_status of its own has those of the site with the empty name. */
    boolean isSkipped(Site site, String status) {
        List<String> words = site.skipStatus().isEmpty() ? plain.skipStatus() : site.skipStatus();
        return words.stream().anyMatch(word -> Names.same(word, status));
    }

    private static boolean fits(String pattern, String file) {
        String name = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
        return fits(
                folded(pattern).codePoints().toArray(),
                folded(name).codePoints().toArray());
    }

    /** The last star takes one more whenever what follows it doesn't fit: never longer than pattern times name. */
    private static boolean fits(int[] pattern, int[] name) {
        int p = 0;
        int star = -1;
        int taken = 0;
        for (int n = 0; n < name.length; ) {
            if (p < pattern.length && pattern[p] == '*') {
                star = p++;
                taken = n;
            } else if (p < pattern.length && (pattern[p] == '?' || pattern[p] == name[n])) {
                p++;
                n++;
            } else if (star >= 0) {
                p = star + 1;
                n = ++taken;
            } else {
                return false;
            }
        }
        while (p < pattern.length && pattern[p] == '*') {
            p++;
        }
        return p == pattern.length;
    }

    /** One computer writes an accent apart from its letter, another doesn't. */
    private static String folded(String name) {
        return Names.fold(Normalizer.normalize(name, Normalizer.Form.NFC));
    }
}
