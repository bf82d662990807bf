package bandwright.pipeline.write.proofs;

import bandwright.pipeline.Run;
import bandwright.pipeline.type.Captions;
import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.Output;
import bandwright.rules.Rulebook;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** proofs/Q1042.png: the pieces of an order in their own colours, for the buyer. */
public final class Proofs implements Output {
    @Override
    public List<OutFile> files(Run run, Rulebook rules) {
        Captions captions = new Captions();
        Map<String, String> codes = ProofOrder.codes(run);
        List<ProofOrder> orders = ProofOrder.of(run, rules);
        Ahead<byte[]> pictures = new Ahead<>(orders.stream()
                .<Supplier<byte[]>>map(
                        order -> () -> png(new ProofPicture(ProofPiece.of(order.units(), codes), run.sights(), captions)
                                .draw(order.order())))
                .collect(Collectors.toList()));
        List<OutFile> files = new ArrayList<>();
        for (int i = 0; i < orders.size(); i++) {
            int number = i;
            files.add(new OutFile(orders.get(i).file(), out -> out.write(pictures.get(number))));
        }
        return files;
    }

    private static byte[] png(BufferedImage image) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(0.34f); // deflate level 6: higher ones take long and gain little
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), param);
        } catch (IOException e) {
            throw new UncheckedIOException(e); // memory doesn't fail
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
