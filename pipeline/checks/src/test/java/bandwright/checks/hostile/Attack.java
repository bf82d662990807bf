package bandwright.checks.hostile;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** Tries inputs on a target one after another; counts how they end, and keeps each that breaks a promise. */
final class Attack {
    /** What the program promises of any input: docs/limits.md. */
    private static final long MOST_SECONDS = 30;

    private static final Path KNOWN = Path.of("src", "test", "resources", "bandwright", "checks", "hostile");
    private static final Path BROKEN = Path.of("target", "hostile");

    private final Target target;
    private final Map<String, Integer> ends = new TreeMap<>();
    private final Map<String, String> broken = new TreeMap<>();
    private final Set<String> told = new HashSet<>();
    private int count;
    private long slowest;

    Attack(Target target) {
        this.target = target;
    }

    /** The sound inputs, then those that once broke it. */
    Attack known() throws IOException {
        int n = 0;
        for (byte[] seed : target.seeds()) {
            one("seed-" + n++, seed);
        }
        Path folder = KNOWN.resolve(target.name());
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                for (Path file : files.sorted().toList()) {
                    one(String.valueOf(file.getFileName()), Files.readAllBytes(file));
                }
            }
        }
        return this;
    }

    /** So many broken ones, from that number on. */
    Attack broken(long from, int many) throws IOException {
        for (long number = from; number < from + many; number++) {
            one(Long.toString(number), Mutation.of(target, number));
        }
        return this;
    }

    /** As many as a short attack has, of numbers that no round before had. */
    Attack round(int from, int round) throws IOException {
        int tries = HostileTest.tries(target);
        return broken(from + (long) round * tries, tries);
    }

    @SuppressWarnings("CatchingUnchecked") // whatever a reader throws is what is looked for
    void one(String name, byte[] input) throws IOException {
        count++;
        long begun = worked();
        try {
            ends.merge(target.trial().of(input), 1, Integer::sum);
            long seconds = TimeUnit.NANOSECONDS.toSeconds(worked() - begun);
            if (seconds >= MOST_SECONDS) {
                keep(name, input, new IllegalStateException("took " + seconds + " s"));
            }
        } catch (Exception | AssertionError | VirtualMachineError e) {
            keep(name, input, e);
        }
        slowest = Math.max(slowest, worked() - begun);
    }

    /** Processor time of all threads: other work on the same computer makes no input slow. */
    private static long worked() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }

    private void keep(String name, byte[] input, Throwable thrown) throws IOException {
        ends.merge("BROKEN", 1, Integer::sum);
        String where = described(thrown);
        if (broken.putIfAbsent(where, name) == null) {
            Path folder = Files.createDirectories(BROKEN.resolve(target.name()));
            Files.write(folder.resolve(name), input);
            Files.writeString(folder.resolve(name + ".txt"), where);
        }
    }

    /** What it was and where in our code, so that one mistake is one finding. */
    private static String described(Throwable thrown) {
        StringBuilder told = new StringBuilder();
        for (Throwable each = thrown; each != null; each = each.getCause()) {
            String message = String.valueOf(each.getMessage());
            told.append(each.getClass().getName());
            if (each instanceof AssertionError) {
                told.append(": ").append(message, 0, Math.min(300, message.length()));
            }
            Stream.of(each.getStackTrace())
                    .filter(frame -> frame.getClassName().startsWith("bandwright"))
                    .limit(each instanceof AssertionError ? 4 : 6)
                    .forEach(frame -> told.append("\n  at ").append(frame));
            told.append('\n');
        }
        return told.toString();
    }

    int count() {
        return count;
    }

    List<String> findings() {
        return broken.entrySet().stream()
                .map(each -> target.name() + " " + each.getValue() + ": " + each.getKey())
                .toList();
    }

    /** Those found since they were last asked for. */
    List<String> news() {
        return findings().stream().filter(told::add).toList();
    }

    Map<String, Integer> ends() {
        return ends;
    }

    @Override
    public String toString() {
        return "%s: %d tries, slowest %d ms, %s"
                .formatted(target.name(), count, TimeUnit.NANOSECONDS.toMillis(slowest), ends);
    }
}
