package bandwright.pipeline.write.index;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.OptionalInt;

/** What every page of ours begins and ends with: one style, no network, no script. */
public final class Page {
    /** Should a stranger's text ever get through as markup, the browser still runs and fetches nothing. */
    private static final String POLICY =
            "default-src 'none'; img-src data: 'self' file:; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

    private Page() {}

    /**
     * Begins a page, up to its body.
     *
     * @param refresh after how many seconds the browser reads it again
     */
    public static Html open(String title, OptionalInt refresh) {
        Html html = new Html();
        html.open("html", "lang", "en").open("head").open("meta", "charset", "utf-8");
        html.open("meta", "http-equiv", "Content-Security-Policy", "content", POLICY);
        refresh.ifPresent(seconds -> html.open("meta", "http-equiv", "refresh", "content", Integer.toString(seconds)));
        html.open("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        return html.line("title", title).style(css()).close("head").open("body");
    }

    /** Ends it. */
    public static String close(Html html) {
        return html.close("body").close("html").toString();
    }

    private static String css() {
        try (InputStream in = Objects.requireNonNull(Page.class.getResourceAsStream("index.css"), "no index.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
