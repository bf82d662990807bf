package bandwright.pipeline.watch;

import java.util.Locale;

/** What a drop looks like, and how long it may look like that. */
enum Seen {
    /** Can be opened and has its end: a zip its directory, a text no hole where its last letters belong. */
    WHOLE(Patience.NONE),
    /** Something beside or in it has a name for the time of a copy only. */
    ARRIVING(Patience.FOR_EVER),
    /** An office program has it open, or left its lock file behind. */
    BEING_EDITED(Patience.FOR_EVER),
    /** Nothing in it: some programs make the name first and fill it later. */
    EMPTY(Patience.A_WHILE),
    CUT_SHORT(Patience.A_WHILE),
    CLOSED(Patience.A_WHILE),
    /** A folder without an order file: somebody may be filling it. */
    NO_ORDERS(Patience.A_WHILE),
    OTHER_ENDING(Patience.NONE),
    LINK(Patience.NONE),
    /** Neither file nor folder: a pipe, a device. */
    NO_FILE(Patience.NONE),
    TOO_MANY(Patience.NONE);

    enum Patience {
        NONE,
        A_WHILE,
        FOR_EVER
    }

    private final Patience patience;

    Seen(Patience patience) {
        this.patience = patience;
    }

    Patience patience() {
        return patience;
    }

    /** The last part of its keys in words.properties. */
    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
