package bandwright.pipeline.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import bandwright.pipeline.Flow;
import bandwright.pipeline.Run;
import bandwright.pipeline.RunId;
import bandwright.pipeline.past.Memory;
import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.Outputs;
import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The sample's index.html opened in a browser and looked over by axe-core. Needs Chromium on the PATH and axe-core's
 * {@code axe.min.js} where the environment's {@code AXE_CORE} says; left out with a word where one is missing, but not
 * where {@code CI} is set.
 */
final class IndexInBrowserTest {
    private static final Path SAMPLE = Path.of("..", "inbox-sample");
    private static final String POLICY = "<meta http-equiv=\"Content-Security-Policy\"[^>]*>";
    private static final int WAIT_MINUTES = 3;

    @TempDir
    static Path folder;

    private static String page = "";

    @BeforeAll
    static void runTheSample() throws IOException, RulebookFaults {
        List<Path> orders = List.of(SAMPLE.resolve("web-shop.csv"), SAMPLE.resolve("weekend-orders.xlsx"));
        Flow.Request asked = new Flow.Request(orders, SAMPLE.resolve("artwork"), Optional.empty());
        Rulebook rules = Rulebook.read(Optional.empty());
        Run run = Flow.decide(new RunId(LocalDate.of(2026, 3, 2), 1), asked, rules, Memory.NOTHING, stage -> {});
        OutFile index = Outputs.files(run, rules, folder).stream()
                .filter(file -> file.name().equals("index.html"))
                .findFirst()
                .orElseThrow();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        index.body().writeTo(out);
        page = out.toString(StandardCharsets.UTF_8);
    }

    @BeforeEach
    void bothAreHere() {
        chromium();
        axe();
    }

    @ParameterizedTest
    @CsvSource({"1, 'rgb(253, 252, 250)'", "0, 'rgb(24, 23, 21)'"})
    void everybodyCanUseThePageLightAndDark(int scheme, String paper) throws IOException, InterruptedException {
        String found = lookedOver(page, scheme);

        assertThat(found).contains("paper " + paper);
        assertThat(found).endsWith("violations:");
    }

    @Test
    void aPageThatSomebodyCannotUseIsFound() throws IOException, InterruptedException {
        String spoiled = page.replace("<html lang=\"en\">", "<html>")
                .replaceFirst("role=\"img\" aria-label=\"[^\"]*\"", "role=\"img\"");

        assertThat(lookedOver(spoiled, 1)).contains("html-has-lang", "svg-img-alt");
    }

    /** What axe-core says of a page, as text; our own policy is taken off, as it lets no script run. */
    private static String lookedOver(String html, int scheme) throws IOException, InterruptedException {
        String open = html.replaceFirst(POLICY, "").replace("</body>", "").replace("</html>", "");
        String look = """
                axe.run().then(found => {
                  const said = document.createElement('pre');
                  said.id = 'said';
                  said.textContent = 'paper ' + getComputedStyle(document.body).backgroundColor
                    + ', passed ' + found.passes.length + ', violations:'
                    + found.violations.map(one => '\\n' + one.id + ' ' + one.nodes.map(node => node.target)).join('');
                  document.body.replaceChildren(said);
                });
                """;
        Path file = Files.createTempFile(folder, "looked-over", ".html");
        Files.writeString(
                file,
                open + "<script>" + Files.readString(axe()) + "</script><script>" + look + "</script></body></html>");
        Matcher said =
                Pattern.compile("<pre id=\"said\">(.*?)</pre>", Pattern.DOTALL).matcher(browsed(file, scheme));
        assertThat(said.find()).as("axe-core has answered").isTrue();
        return said.group(1);
    }

    /** The document after its scripts have run. Scheme 0 is dark, 1 light. */
    private static String browsed(Path file, int scheme) throws IOException, InterruptedException {
        Path dom = Files.createTempFile(folder, "dom", ".html");
        Process browser = new ProcessBuilder(
                        chromium(),
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--user-data-dir=" + folder.resolve("browser"),
                        "--blink-settings=preferredColorScheme=" + scheme,
                        "--virtual-time-budget=60000",
                        "--dump-dom",
                        file.toUri().toString())
                .redirectOutput(dom.toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        if (!browser.waitFor(WAIT_MINUTES, TimeUnit.MINUTES)) {
            browser.destroyForcibly();
        }
        return Files.readString(dom, StandardCharsets.UTF_8);
    }

    private static String chromium() {
        return found(
                        folders().flatMap(bin -> Stream.of("chromium", "chromium-browser")
                                .map(bin::resolve)),
                        "no chromium on the PATH: install it to look index.html over")
                .toString();
    }

    private static Stream<Path> folders() {
        String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
        return Pattern.compile(Pattern.quote(File.pathSeparator))
                .splitAsStream(path)
                .map(Path::of);
    }

    private static Path axe() {
        return found(
                Optional.ofNullable(System.getenv("AXE_CORE")).map(Path::of).stream(),
                "AXE_CORE doesn't name axe-core's axe.min.js: npm install axe-core, then set it");
    }

    /** Where a build is checked by a machine nothing may be left out. */
    private static Path found(Stream<Path> places, String otherwise) {
        Optional<Path> found = places.filter(Files::isRegularFile).findFirst();
        if (System.getenv("CI") == null) {
            assumeTrue(found.isPresent(), otherwise);
        }
        return found.orElseThrow(() -> new AssertionError(otherwise));
    }
}
