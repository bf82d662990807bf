package bandwright.checks.hostile;

import java.util.List;

/**
 * One reader of strangers' bytes, and what it is attacked with.
 *
 * @param name also the folder of inputs that once broke it
 * @param seeds sound inputs, of which broken ones are made
 * @param words pieces of the format, put in anywhere
 * @param trial reads an input; throws where the reader breaks its promise
 */
record Target(String name, List<byte[]> seeds, Mending mending, List<String> words, Trial trial) {
    Target {
        seeds = List.copyOf(seeds);
        words = List.copyOf(words);
    }

    /** Reads an input and says in a word how it ended: "taken", or the name of the refusal. */
    @FunctionalInterface
    interface Trial {
        String of(byte[] input) throws Exception;
    }

    @Override
    public String toString() {
        return name;
    }
}
