package bandwright.pipeline.sample;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jspecify.annotations.Nullable;

/**
 * What a file of a run says, part by part, however its bytes are packed: two builds of Java may deflate a stream and
 * encode a small JPEG differently, and round an outline otherwise in its last digit.
 *
 * @param texts by the part's name; numbers in them may differ by a hundredth
 * @param pictures of JPEG data, by the part's name; a channel may differ a little
 */
record DecodedFile(Map<String, String> texts, Map<String, BufferedImage> pictures) {
    private static final Pattern PICTURE = Pattern.compile("data:image/jpeg;base64,([A-Za-z0-9+/=]+)");

    private DecodedFile() {
        this(new TreeMap<>(), new TreeMap<>());
    }

    static DecodedFile of(String name, byte[] bytes) throws IOException {
        DecodedFile file = new DecodedFile();
        if (name.endsWith(".pdf")) {
            file.pdf(bytes);
        } else if (name.endsWith(".xlsx")) {
            file.zip(bytes);
        } else {
            file.text(new String(bytes, StandardCharsets.UTF_8));
        }
        return file;
    }

    private void text(String text) throws IOException {
        Matcher matcher = PICTURE.matcher(text);
        StringBuilder rest = new StringBuilder();
        while (matcher.find()) {
            String name = "picture " + pictures.size();
            picture(name, Base64.getDecoder().decode(matcher.group(1)));
            matcher.appendReplacement(rest, name);
        }
        matcher.appendTail(rest);
        texts.put("text", rest.toString());
    }

    private void zip(byte[] bytes) throws IOException {
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                texts.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
    }

    private void pdf(byte[] bytes) throws IOException {
        try (PDDocument document = Loader.loadPDF(bytes)) {
            for (COSObjectKey key : document.getDocument().getXrefTable().keySet()) {
                COSBase object = document.getDocument().getObjectFromPool(key).getObject();
                String name = "object %05d".formatted(key.getNumber());
                if (object instanceof COSStream stream) {
                    stream(name, stream);
                } else {
                    texts.put(name, words(object));
                }
            }
        }
    }

    private void stream(String name, COSStream stream) throws IOException {
        COSName type = stream.getCOSName(COSName.TYPE);
        if (COSName.OBJ_STM.equals(type) || COSName.XREF.equals(type)) {
            return; // how the objects are packed
        }
        COSDictionary said = new COSDictionary(stream);
        said.removeItem(COSName.LENGTH);
        texts.put(name, words(said));
        if (COSName.DCT_DECODE.equals(stream.getFilters())) {
            try (InputStream jpeg = stream.createRawInputStream()) {
                picture(name, jpeg.readAllBytes());
            }
            return;
        }
        try (InputStream data = stream.createInputStream()) {
            boolean isDrawn = type == null || COSName.FORM.equals(stream.getCOSName(COSName.SUBTYPE));
            byte[] content = data.readAllBytes();
            String drawn = isDrawn
                    ? new String(content, StandardCharsets.ISO_8859_1)
                    : HexFormat.of().formatHex(content);
            texts.put(name + " data", drawn);
        }
    }

    private static String words(@Nullable COSBase object) {
        if (object instanceof COSObject other) {
            return other.getKey().toString();
        }
        if (object instanceof COSArray array) {
            return StreamSupport.stream(array.spliterator(), false)
                    .map(DecodedFile::words)
                    .collect(Collectors.joining(" ", "[ ", " ]"));
        }
        if (object instanceof COSDictionary dictionary) {
            return dictionary.entrySet().stream()
                    .map(entry -> entry.getKey().getName() + " " + words(entry.getValue()))
                    .collect(Collectors.joining(" ", "<< ", " >>"));
        }
        return String.valueOf(object);
    }

    /** Of a JPEG that no decoder here shows, such as CMYK, nothing is compared but that it is there. */
    private void picture(String name, byte[] jpeg) throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(jpeg));
        if (image != null) {
            pictures.put(name, image);
        }
    }
}
