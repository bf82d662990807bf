package bandwright.pipeline.write.pdf;

import bandwright.pipeline.pixels.PictureColour;
import bandwright.pipeline.pixels.SrgbProfile;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The colour spaces of one document's pictures; each profile is stored once. */
final class PictureColourSpaces {
    private final PDDocument document;
    private final Map<ByteBuffer, COSArray> profiles = new TreeMap<>();

    PictureColourSpaces(PDDocument document) {
        this.document = document;
    }

    COSArray srgb() throws IOException {
        return profiled(ByteBuffer.wrap(SrgbProfile.bytes()), 3);
    }

    COSBase of(PictureColour colour) throws IOException {
        if (colour instanceof PictureColour.Profiled own) {
            return profiled(own.profile(), own.components());
        }
        if (colour instanceof PictureColour.Palette palette) {
            return indexed(palette);
        }
        if (colour instanceof PictureColour.CalibratedRgb own) {
            COSDictionary dictionary = calibrated(own.white());
            dictionary.setItem(COSName.GAMMA, numbers(List.of(own.gamma(), own.gamma(), own.gamma())));
            dictionary.setItem(COSName.MATRIX, numbers(own.matrix()));
            return array(COSName.CALRGB, dictionary);
        }
        if (colour instanceof PictureColour.CalibratedGrey own) {
            COSDictionary dictionary = calibrated(own.white());
            dictionary.setItem(COSName.GAMMA, new COSFloat((float) own.gamma()));
            return array(COSName.CALGRAY, dictionary);
        }
        if (colour instanceof PictureColour.Device own) {
            return own.components() == 4 ? COSName.DEVICECMYK : COSName.DEVICERGB;
        }
        if (colour instanceof PictureColour.Cmyk) {
            return COSName.DEVICECMYK;
        }
        return colour instanceof PictureColour.Grey ? COSName.DEVICEGRAY : srgb();
    }

    private COSArray indexed(PictureColour.Palette palette) throws IOException {
        byte[] colours = copy(palette.colours());
        return array(
                COSName.INDEXED,
                of(palette.base()),
                COSInteger.get(colours.length / 3 - 1),
                new COSString(colours, true));
    }

    private COSArray profiled(ByteBuffer profile, int components) throws IOException {
        COSArray known = profiles.get(profile);
        if (known != null) {
            return known;
        }
        COSStream stream = document.getDocument().createCOSStream();
        try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(copy(profile));
        }
        stream.setInt(COSName.N, components);
        stream.setItem(COSName.ALTERNATE, device(components));
        COSArray space = array(COSName.ICCBASED, stream);
        profiles.put(profile, space);
        return space;
    }

    private static COSName device(int components) {
        if (components == 4) {
            return COSName.DEVICECMYK;
        }
        return components == 1 ? COSName.DEVICEGRAY : COSName.DEVICERGB;
    }

    private static byte[] copy(ByteBuffer buffer) {
        byte[] bytes = new byte[buffer.remaining()];
        buffer.duplicate().get(bytes);
        return bytes;
    }

    private static COSDictionary calibrated(List<Double> white) {
        COSDictionary dictionary = new COSDictionary();
        dictionary.setDirect(true);
        dictionary.setItem(COSName.WHITE_POINT, numbers(white));
        return dictionary;
    }

    private static COSArray numbers(List<Double> values) {
        COSArray array = new COSArray();
        values.forEach(value -> array.add(new COSFloat(Math.round(value * 1e6) / 1e6f)));
        return array;
    }

    private static COSArray array(COSBase... parts) {
        COSArray array = new COSArray();
        for (COSBase part : parts) {
            array.add(part);
        }
        return array;
    }
}
