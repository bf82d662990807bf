package bandwright.checks.hostile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.LogManager;

/**
 * Attacks for so many minutes, every target in turn for so many tries, and says after each round what came of it: see
 * DEVELOPERS.md. Numbers go on where the short attack of the build ends.
 */
final class LongAttack {
    private static final long NANOS_A_MINUTE = 60_000_000_000L;

    private LongAttack() {}

    /**
     * Runs it.
     *
     * @param args minutes; tries of each target in a round; the number of the first try; a pattern for targets' names
     */
    public static void main(String[] args) throws Exception {
        LogManager.getLogManager().reset();
        long end = System.nanoTime() + Long.parseLong(args[0]) * NANOS_A_MINUTE;
        int tries = Integer.parseInt(args[1]);
        Path scratch = Files.createTempDirectory("hostile");
        List<Attack> attacks = new ArrayList<>();
        for (Target target : new Targets(scratch).all()) {
            if (args.length < 4 || target.name().matches(args[3])) {
                attacks.add(new Attack(target));
            }
        }
        for (long from = Long.parseLong(args[2]); System.nanoTime() < end; from += tries) {
            round(attacks, from, tries, end);
        }
    }

    private static void round(List<Attack> attacks, long from, int tries, long end) throws IOException {
        for (Attack attack : attacks) {
            if (System.nanoTime() < end) {
                attack.broken(from, tries);
                System.out.println(attack);
                attack.news().forEach(System.out::println);
            }
        }
    }
}
