package bandwright.checks.faults;

import bandwright.checks.faults.DiskCall.Made;
import bandwright.checks.faults.DiskCall.Moved;
import bandwright.checks.faults.DiskCall.Removed;
import bandwright.checks.faults.DiskCall.Synced;
import bandwright.checks.faults.DiskCall.Written;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a process asked of the disk under one folder, in its order, as strace wrote it down: Java's calls and SQLite's
 * alike. All texts are in hexadecimal, a file each thread, each line with its time.
 */
final class DiskCalls {
    /** The options of strace for that, before the command. */
    static final List<String> OPTIONS = List.of(
            "-f",
            "-ff",
            "--seccomp-bpf",
            "-ttt",
            "-y",
            "-xx",
            "-s",
            "10000000",
            "-e",
            "trace=openat,write,pwrite64,writev,ftruncate,fallocate,fsync,fdatasync,rename,renameat,renameat2,unlink,"
                    + "unlinkat,rmdir,mkdir,mkdirat,copy_file_range,sendfile");

    private static final Pattern CALL = Pattern.compile("(\\w+)\\((.*)\\)\\s+= (\\d+).*");
    private static final Pattern OPENED = Pattern.compile("\\d+<((?:\\\\x[0-9a-f]{2})+)>");
    private static final Pattern TEXT = Pattern.compile("\"((?:\\\\x[0-9a-f]{2})*)\"");
    private static final Pattern LAST_NUMBER = Pattern.compile(".*, (\\d+)");

    private final Path folder;
    private final List<DiskCall> calls = new ArrayList<>();
    private final Set<Path> there = new HashSet<>();
    private final Map<Path, Long> ends = new HashMap<>();

    private DiskCalls(Path folder) {
        this.folder = folder;
    }

    /** Reads the files of a record that begin with that name. */
    static List<DiskCall> read(Path record, Path folder) throws IOException {
        List<String> lines = new ArrayList<>();
        try (Stream<Path> files = Files.list(record.getParent())) {
            String name = record.getFileName() + ".";
            for (Path file : files.filter(
                            each -> String.valueOf(each.getFileName()).startsWith(name))
                    .toList()) {
                lines.addAll(Files.readAllLines(file, StandardCharsets.ISO_8859_1));
            }
        }
        lines.sort(null); // by time, whose digits are as many in all
        DiskCalls calls = new DiskCalls(folder);
        for (String line : lines) {
            Matcher call = CALL.matcher(line.substring(line.indexOf(' ') + 1));
            if (call.matches()) {
                calls.take(call.group(1), call.group(2), Long.parseLong(call.group(3)));
            }
        }
        return calls.calls;
    }

    private void take(String name, String words, long result) {
        List<Path> paths = texts(words).stream().map(DiskCalls::path).toList();
        switch (name) {
            case "mkdir", "mkdirat" -> made(paths.get(0), true);
            case "openat" -> {
                if (words.contains("O_CREAT")) {
                    made(paths.get(0), false);
                }
            }
            case "write" -> {
                Path file = opened(words);
                written(file, ends.getOrDefault(file, 0L), texts(words).get(0));
            }
            case "pwrite64" ->
                written(opened(words), number(words), texts(words).get(0));
            case "fsync", "fdatasync" -> add(new Synced(opened(words)));
            case "rename", "renameat", "renameat2" -> moved(paths.get(0), paths.get(1));
            case "unlink", "unlinkat", "rmdir" -> {
                there.remove(paths.get(0));
                ends.remove(paths.get(0));
                add(new Removed(paths.get(0)));
            }
            default -> {
                if (opened(words).startsWith(folder) && result > 0) {
                    throw new IllegalStateException("a call that nothing here replays: " + name);
                }
            }
        }
    }

    private void add(DiskCall call) {
        boolean isOfFolder = call instanceof Synced && call.path().equals(folder.getParent()); // makes its name certain
        if (isOfFolder || call.path().startsWith(folder)) {
            calls.add(call);
        }
    }

    private void made(Path path, boolean isFolder) {
        if (there.add(path)) {
            add(new Made(path, isFolder));
        }
    }

    private void written(Path file, long at, byte[] bytes) {
        ends.put(file, at + bytes.length);
        add(new Written(file, at, ByteBuffer.wrap(bytes).asReadOnlyBuffer()));
    }

    private void moved(Path from, Path to) {
        for (Path path : List.copyOf(there)) {
            if (path.startsWith(from)) {
                there.remove(path);
                there.add(to.resolve(from.relativize(path)));
            }
        }
        add(new Moved(from, to));
    }

    private static long number(String words) {
        Matcher last = LAST_NUMBER.matcher(words);
        return last.matches() ? Long.parseLong(last.group(1)) : 0;
    }

    private static Path opened(String words) {
        Matcher opened = OPENED.matcher(words);
        return opened.lookingAt() ? path(bytes(opened.group(1))) : Path.of("");
    }

    private static Path path(byte[] text) {
        String name = new String(text, StandardCharsets.UTF_8);
        return name.indexOf('\0') >= 0 ? Path.of("") : Path.of(name);
    }

    private static List<byte[]> texts(String words) {
        return TEXT.matcher(words).results().map(text -> bytes(text.group(1))).toList();
    }

    private static byte[] bytes(String hexadecimal) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (int at = 2; at < hexadecimal.length(); at += 4) {
            out.write(Integer.parseInt(hexadecimal, at, at + 2, 16));
        }
        return out.toByteArray();
    }
}
