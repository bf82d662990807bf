package bandwright.pipeline.sample.art;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** The artwork folder of the Quillmoor Lighthouse Trust's gift shop: every picture, drawn and stored. */
public final class Gallery {
    private Gallery() {}

    /** Draws all pictures into that folder and says their names. */
    public static List<String> write(Path folder) throws IOException {
        Files.createDirectories(folder);
        jpeg(TernPicture.draw(), 0.55f, folder.resolve("tern.jpg"));
        png(StormLampPicture.four().image(), folder.resolve("storm-lamp.png"));
        flat(StormLampPicture.one(), folder.resolve("storm-lamp-square.png"));
        flat(ChoirPicture.draw(), folder.resolve("choir.png"));
        flat(RowingPicture.draw(1), folder.resolve("rowing-club.png"));
        flat(TidesPicture.draw(), folder.resolve("tide-table.png"));
        flat(SkerriesPicture.draw(2250, 1000, 1), folder.resolve("skerries.png"));
        flat(SkerriesPicture.draw(2352, 2070, 0.85), folder.resolve("skerries-tall.png"));
        flat(ShoalPicture.draw(9, 6, 1), folder.resolve("shoal.png"));
        flat(ShoalPicture.draw(8, 12, 0.9), folder.resolve("shoal-tall.png"));
        flat(KeeperPicture.draw(1100, 0.92), folder.resolve("keeper-square.png"));
        flat(KeeperPicture.draw(2475, 0.82), folder.resolve("keeper.png"));
        flat(FoghornPicture.draw(1100, 0.92), folder.resolve("foghorn-square.png"));
        flat(FoghornPicture.draw(2475, 0.82), folder.resolve("foghorn.png"));
        Files.writeString(folder.resolve("pennants.svg"), PennantsPicture.draw());
        // What a buyer sends from a telephone: far too few pixels for a mug.
        Files.createDirectories(folder.resolve("orders"));
        jpeg(RowingPicture.draw(0.18), 0.8f, folder.resolve("orders/Q1047-3.jpg"));
        return List.of(
                "tern.jpg",
                "storm-lamp.png",
                "storm-lamp-square.png",
                "choir.png",
                "rowing-club.png",
                "tide-table.png",
                "skerries.png",
                "skerries-tall.png",
                "shoal.png",
                "shoal-tall.png",
                "keeper-square.png",
                "keeper.png",
                "foghorn-square.png",
                "foghorn.png",
                "pennants.svg",
                "orders/Q1047-3.jpg");
    }

    private static void flat(Canvas picture, Path file) throws IOException {
        png(Palette.picture(picture.image()), file);
    }

    /** Packed as small as PNG can: the pictures are handed around with the program. */
    private static void png(BufferedImage image, Path file) throws IOException {
        write("png", image, 0, file);
    }

    private static void jpeg(Canvas picture, float kept, Path file) throws IOException {
        write("jpeg", picture.image(), kept, file);
    }

    private static void write(String kind, BufferedImage image, float quality, Path file) throws IOException {
        Files.deleteIfExists(file);
        ImageWriter writer = ImageIO.getImageWritersByFormatName(kind).next();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(file.toFile())) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(quality);
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), param);
        } finally {
            writer.dispose();
        }
    }
}
