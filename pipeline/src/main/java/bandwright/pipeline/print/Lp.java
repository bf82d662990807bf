package bandwright.pipeline.print;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The program lp (POSIX.1-2017, "lp"; the options are those of CUPS), which gives a file to a queue of the system.
 *
 * @param limit how long it may take; a queue on the network takes seconds
 */
public record Lp(String program, Duration limit) {
    /** Whatever lp the system finds first; a minute is our judgement. */
    public static final Lp OF_THE_SYSTEM = new Lp("lp", Duration.ofSeconds(60));

    /** "request id is desk-12 (1 file(s))", as POSIX words it. */
    private static final Pattern JOB = Pattern.compile("request id is (\\S+)");

    private static final int MOST_SAID = 4000;
    private static final int LONGEST_LINE = 200;

    /** Gives the job to its queue and waits for the answer. */
    Answer hand(PrintJob job) {
        List<String> command = new ArrayList<>(List.of(program));
        command.addAll(job.words());
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("LC_ALL", "C.UTF-8"); // its answer is read
        Process process;
        try {
            process = builder.start();
        } catch (IOException e) {
            return new Answer(Answer.Kind.NO_LP, "");
        }
        CompletableFuture<String> said = CompletableFuture.supplyAsync(() -> read(process));
        try {
            process.getOutputStream().close();
            if (!process.waitFor(limit.toMillis(), TimeUnit.MILLISECONDS)) {
                return stopped(process);
            }
        } catch (IOException e) {
            return stopped(process);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return stopped(process);
        }
        return answer(process.exitValue(), text(said));
    }

    private static Answer answer(int exit, String said) {
        if (exit == 0) {
            Matcher job = JOB.matcher(said);
            return new Answer(Answer.Kind.TAKEN, job.find() ? job.group(1) : "");
        }
        if (exit > 128) {
            return new Answer(Answer.Kind.UNCLEAR, ""); // killed by a signal, perhaps after the job was given
        }
        String line = said.lines()
                .map(String::strip)
                .filter(text -> !text.isEmpty())
                .findFirst()
                .orElse(String.valueOf(exit));
        return new Answer(
                Answer.Kind.REFUSED, line.length() > LONGEST_LINE ? line.substring(0, LONGEST_LINE) + "…" : line);
    }

    /** Whether it gave the job away before it was stopped, nobody knows. */
    private static Answer stopped(Process process) {
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
        return new Answer(Answer.Kind.UNCLEAR, "");
    }

    /** All of it is taken, or a talkative program would wait for ever; the beginning is kept. */
    private static String read(Process process) {
        try (InputStream in = process.getInputStream()) {
            byte[] begin = in.readNBytes(MOST_SAID);
            in.transferTo(OutputStream.nullOutputStream());
            return new String(begin, StandardCharsets.UTF_8);
        } catch (IOException e) {
            return "";
        }
    }

    /** A child that it left behind may hold its end open. */
    private static String text(CompletableFuture<String> said) {
        try {
            return said.get(1, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return "";
        } catch (ExecutionException | TimeoutException e) {
            return "";
        }
    }
}
