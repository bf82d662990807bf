package bandwright.pipeline.watch;

import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Where a link of status.html leads: from the outbox, so that it works from whichever computer opens the share. */
record Links(Asked asked) {
    String toReason(String name) {
        Path outbox = asked.outbox().toAbsolutePath().normalize();
        Path notTaken = asked.inbox().toAbsolutePath().normalize().resolve(DropFolder.NOT_TAKEN);
        try {
            List<String> steps = new ArrayList<>();
            outbox.relativize(notTaken).forEach(step -> steps.add(encoded(step.toString())));
            return String.join("/", steps) + "/" + encoded(name);
        } catch (IllegalArgumentException otherDrive) {
            return notTaken.toUri() + encoded(name);
        }
    }

    /** RFC 3986; what is no path sign is written in percent. */
    static String encoded(String path) {
        try {
            return new URI(null, null, "/" + path, null).toASCIIString().substring(1);
        } catch (URISyntaxException e) {
            throw new IllegalArgumentException(path, e);
        }
    }
}
