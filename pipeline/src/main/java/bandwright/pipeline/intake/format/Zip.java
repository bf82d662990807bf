package bandwright.pipeline.intake.format;

import bandwright.pipeline.limits.Limits;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLStreamException;

/** The parts of a zipped order file; refuses a small file that unpacks to a huge one, whatever sizes it claims. */
final class Zip implements Closeable {
    private static final int ENTRIES = 10_000;

    private final ZipFile file;
    private final UnpackedBytes unpacked = new UnpackedBytes();

    private Zip(ZipFile file) {
        this.file = file;
    }

    static Zip open(Path path) throws IOException, Unreadable {
        ZipFile file;
        try {
            file = new ZipFile(path.toFile());
        } catch (ZipException e) {
            throw Unreadable.of("file-cut-short");
        }
        try {
            checkSizes(file);
            return new Zip(file);
        } catch (Unreadable e) {
            file.close();
            throw e;
        }
    }

    private static void checkSizes(ZipFile file) throws Unreadable {
        if (file.size() > ENTRIES) {
            throw Unreadable.of("unpacks-too-large", Limits.UNPACKED_BYTES / 1_000_000);
        }
        long sum = 0;
        for (ZipEntry entry : Collections.list(file.entries())) {
            sum += Math.max(0, entry.getSize());
            if (sum > Limits.UNPACKED_BYTES) {
                throw Unreadable.of("unpacks-too-large", Limits.UNPACKED_BYTES / 1_000_000);
            }
        }
    }

    boolean has(String part) {
        return file.getEntry(part) != null;
    }

    Xml xml(String part) throws IOException, XMLStreamException, Unreadable {
        ZipEntry entry = file.getEntry(part);
        if (entry == null) {
            throw Unreadable.of("file-damaged");
        }
        return Xml.open(unpacked.of(file.getInputStream(entry)));
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
