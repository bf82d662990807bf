package bandwright.pipeline.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import picocli.CommandLine;

/** The files that start the watcher with the computer say command lines that the program understands. */
final class ServiceFilesTest {
    private static final Path SERVICES = Path.of("..", "docs", "services");

    @Test
    void systemd() throws Exception {
        Matcher line = Pattern.compile("(?m)^ExecStart=\\S+/pipeline/bandwright (.*)$")
                .matcher(Files.readString(SERVICES.resolve("bandwright-watch.service")));
        assertThat(line.find()).isTrue();
        understood(List.of(line.group(1).split(" ", -1)));
    }

    @Test
    void taskScheduler() throws Exception {
        Document task = xml("bandwright-watch.xml");
        assertThat(text(task, "Command")).endsWith("bandwright.cmd");
        assertThat(text(task, "ExecutionTimeLimit")).as("for ever").isEqualTo("PT0S");
        understood(List.of(text(task, "Arguments").split(" ", -1)));
    }

    @Test
    void launchd() throws Exception {
        NodeList strings = xml("org.example.bandwright-watch.plist").getElementsByTagName("array");
        NodeList words = ((Element) strings.item(0)).getElementsByTagName("string");
        List<String> line = new ArrayList<>();
        for (int i = 1; i < words.getLength(); i++) {
            line.add(words.item(i).getTextContent());
        }
        assertThat(words.item(0).getTextContent()).endsWith("/pipeline/bandwright");
        understood(line);
    }

    private static void understood(List<String> words) {
        assertThat(words.get(0)).isEqualTo("watch");
        PrintWriter nowhere = new PrintWriter(new StringWriter());
        CommandLine line = new CommandLine(Main.class, new Commands(new Terminal(nowhere, nowhere, false)));
        line.setResourceBundle(new WordsBundle());
        assertThatCode(() -> line.parseArgs(words.toArray(String[]::new)))
                .as(words.toString())
                .doesNotThrowAnyException();
    }

    private static Document xml(String name) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(SERVICES.resolve(name).toFile());
    }

    private static String text(Document task, String element) {
        return task.getElementsByTagName(element).item(0).getTextContent();
    }
}
