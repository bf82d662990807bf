package bandwright.pipeline.artwork.vector;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.ArtworkShelf;
import bandwright.pipeline.artwork.Found;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Proxy;
import java.net.ProxySelector;
import java.net.SocketAddress;
import java.net.URI;
import java.nio.channels.ServerSocketChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Drawings that call a server of this computer: nobody rings there, and nobody asks for a way to it. */
class NothingIsFetchedTest {
    private static final String SVG = "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink="
            + "\"http://www.w3.org/1999/xlink\" width=\"200\" height=\"100\">%s<rect width=\"9\" height=\"9\"/></svg>";

    @TempDir
    Path folder;

    @Test
    void nobodyRings() throws IOException {
        Asked asked = new Asked();
        ProxySelector before = ProxySelector.getDefault();
        try (ServerSocketChannel server = ServerSocketChannel.open()) {
            server.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0));
            server.configureBlocking(false);
            ProxySelector.setDefault(asked);
            int port = server.socket().getLocalPort();
            for (String text : texts("http://127.0.0.1:" + port + "/x")) {
                look(text);
            }
            assertThat(server.accept()).isNull();
            assertThat(asked.addresses).isEmpty();
        } finally {
            ProxySelector.setDefault(before);
        }
    }

    private void look(String text) throws IOException {
        String name = text.startsWith("%PDF") ? "a.pdf" : "a.svg";
        Files.writeString(folder.resolve(name), text);
        Found found = ArtworkShelf.open(folder).find(name);
        if (found instanceof Found.Picture picture) {
            ArtworkFile artwork = picture.artwork();
            try (VectorArtwork vector = VectorArtwork.open(artwork)) {
                assertThat(vector.pixels(20, 10).getWidth()).isEqualTo(20);
            }
        }
    }

    private static List<String> texts(String address) {
        List<String> texts = new ArrayList<>();
        for (String body : List.of(
                "<image href=\"%s\" width=\"9\" height=\"9\"/>",
                "<image xlink:href=\"%s\" width=\"9\" height=\"9\"/>",
                "<use href=\"%s#a\"/>",
                "<script href=\"%s\"/>",
                "<a href=\"%s\"><rect width=\"9\" height=\"9\"/></a>",
                "<style>@import url(%s);</style>",
                "<style>@font-face{font-family:a;src:url(%s)}</style>",
                "<rect width=\"9\" height=\"9\" fill=\"url(%s)\"/>",
                "<g cursor=\"url(%s)\"/>",
                "<filter id=\"f\"><feImage href=\"%s\"/></filter><rect width=\"9\" height=\"9\" filter=\"url(#f)\"/>",
                "<g xml:base=\"%s\"><use href=\"#a\"/></g>")) {
            texts.add(SVG.formatted(body.formatted(address)));
        }
        texts.add("<!DOCTYPE svg SYSTEM \"%s\">".formatted(address) + SVG.formatted(""));
        texts.add("<!DOCTYPE svg [<!ENTITY %% e SYSTEM \"%s\"> %%e;]>".formatted(address) + SVG.formatted(""));
        texts.add("<?xml-stylesheet href=\"%s\"?>".formatted(address) + SVG.formatted(""));
        String action = "<< /S /URI /URI (%s) >>".formatted(address);
        PdfText pdf = PdfText.page(
                        "/AA << /O %s >> /Annots [<< /Subtype /Link /A %s >>]".formatted(action, action), "0 g")
                .object(1, "<< /Type /Catalog /Pages 2 0 R /OpenAction " + action + " >>");
        texts.add(new String(pdf.file(), java.nio.charset.StandardCharsets.ISO_8859_1));
        PdfText outer = PdfText.page("/Resources << /XObject << /F 5 0 R >> >>", "/F Do").stream(
                "/Subtype /Form /BBox [0 0 9 9] /F << /FS /URL /F (%s) >>".formatted(address), new byte[0]);
        texts.add(new String(outer.file(), java.nio.charset.StandardCharsets.ISO_8859_1));
        return texts;
    }

    /** Whoever opens an address asks first which way to take. */
    private static final class Asked extends ProxySelector {
        private final List<URI> addresses = new ArrayList<>();

        @Override
        public List<Proxy> select(URI uri) {
            addresses.add(uri);
            return List.of(Proxy.NO_PROXY);
        }

        @Override
        public void connectFailed(URI uri, SocketAddress address, IOException e) {
            addresses.add(uri);
        }
    }
}
