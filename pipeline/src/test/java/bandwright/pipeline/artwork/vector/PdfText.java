package bandwright.pipeline.artwork.vector;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.Deflater;

/** PDF files written by hand, object by object: what no honest program writes. */
final class PdfText {
    private final List<byte[]> objects = new ArrayList<>();
    private String trailer = "";

    /** A catalog, a page tree and a page of 200 x 100 points whose content is object 4. */
    static PdfText page(String content) {
        return page("", content);
    }

    /** @param more entries of the page, its resources for one */
    static PdfText page(String more, String content) {
        return new PdfText()
                        .object("<< /Type /Catalog /Pages 2 0 R >>")
                        .object("<< /Type /Pages /Kids [3 0 R] /Count 1 >>")
                        .object("<< /Type /Page /Parent 2 0 R /MediaBox [0 0 200 100] /Contents 4 0 R " + more + " >>")
                        .stream("", content.getBytes(StandardCharsets.ISO_8859_1));
    }

    PdfText object(String text) {
        objects.add(text.getBytes(StandardCharsets.ISO_8859_1));
        return this;
    }

    /** Instead of one that is there. */
    PdfText object(int number, String text) {
        objects.set(number - 1, text.getBytes(StandardCharsets.ISO_8859_1));
        return this;
    }

    PdfText stream(String entries, byte[] data) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(
                ("<< /Length " + data.length + " " + entries + " >>\nstream\n").getBytes(StandardCharsets.ISO_8859_1));
        out.writeBytes(data);
        out.writeBytes("\nendstream".getBytes(StandardCharsets.ISO_8859_1));
        objects.add(out.toByteArray());
        return this;
    }

    PdfText trailer(String entries) {
        trailer = entries;
        return this;
    }

    static byte[] deflated(byte[] plain) {
        Deflater deflater = new Deflater(9);
        deflater.setInput(plain);
        deflater.finish();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        byte[] some = new byte[1 << 16];
        while (!deflater.finished()) {
            out.write(some, 0, deflater.deflate(some));
        }
        deflater.end();
        return out.toByteArray();
    }

    byte[] file() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes("%PDF-1.7\n".getBytes(StandardCharsets.ISO_8859_1));
        StringBuilder table = new StringBuilder("xref\n0 " + (objects.size() + 1) + "\n0000000000 65535 f \n");
        for (int i = 0; i < objects.size(); i++) {
            table.append("%010d 00000 n \n".formatted(out.size()));
            out.writeBytes((i + 1 + " 0 obj\n").getBytes(StandardCharsets.ISO_8859_1));
            out.writeBytes(objects.get(i));
            out.writeBytes("\nendobj\n".getBytes(StandardCharsets.ISO_8859_1));
        }
        int start = out.size();
        out.writeBytes((table + "trailer\n<< /Size " + (objects.size() + 1) + " /Root 1 0 R " + trailer
                        + " >>\nstartxref\n" + start + "\n%%EOF\n")
                .getBytes(StandardCharsets.ISO_8859_1));
        return out.toByteArray();
    }
}
