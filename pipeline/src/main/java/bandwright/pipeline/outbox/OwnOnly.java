package bandwright.pipeline.outbox;

import java.nio.file.FileSystems;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;

/**
 * What a new file or folder is made with so that only this user can open it, where the system knows such rights: buyers'
 * names stand in it. A share or a stick that knows none ignores them.
 */
public final class OwnOnly {
    private static final boolean KNOWS_RIGHTS =
            FileSystems.getDefault().supportedFileAttributeViews().contains("posix");

    private OwnOnly() {}

    public static FileAttribute<?>[] file() {
        return rights("rw-------");
    }

    public static FileAttribute<?>[] folder() {
        return rights("rwx------");
    }

    private static FileAttribute<?>[] rights(String rights) {
        return KNOWS_RIGHTS
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))}
                : new FileAttribute<?>[0];
    }
}
