package bandwright.pipeline.artwork;

import bandwright.pipeline.artwork.vector.VectorSize;
import bandwright.pipeline.limits.Limits;
import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What a file of the artwork folder is: a picture with its size, or why it can't be printed. Pixels are unpacked only
 * where nothing else tells whether they are whole, and none is kept.
 */
final class Probe {
    private final String name;
    private final Path path;

    Probe(String name, Path path) {
        this.name = name;
        this.path = path;
    }

    Found found() {
        try {
            return read();
        } catch (RefusedPicture e) {
            return new Found.Refused(name, e.flaw());
        } catch (EOFException e) {
            return new Found.Refused(name, Flaw.CUT_SHORT);
        } catch (IOException e) {
            return new Found.Refused(name, Flaw.CLOSED);
        }
    }

    private Found read() throws IOException {
        if (!Files.isRegularFile(path)) {
            throw new RefusedPicture(Flaw.CLOSED);
        }
        try (PictureBytes bytes = PictureBytes.open(path)) {
            if (bytes.size() > Limits.PICTURE_BYTES) {
                throw new RefusedPicture(Flaw.TOO_MANY_BYTES);
            }
            Optional<PictureKind> kind = PictureKind.of(bytes);
            if (kind.isEmpty()) {
                throw new RefusedPicture(Flaw.UNKNOWN_KIND);
            }
            return switch (kind.get()) {
                case JPEG -> jpeg(bytes);
                case PNG -> png(bytes);
                case SVG -> vector(bytes, ArtworkFile.Kind.SVG);
                case PDF -> vector(bytes, ArtworkFile.Kind.PDF);
                case TIFF -> tiff(bytes);
                case WEBP -> webp(bytes);
                case GIF -> gif(bytes);
            };
        }
    }

    private Found jpeg(PictureBytes bytes) throws IOException {
        JpegHeader header = JpegHeader.read(bytes);
        requireSize(header.width(), header.height());
        return picture(bytes, ArtworkFile.Kind.JPEG, header.width(), header.height(), header.orientation());
    }

    private Found png(PictureBytes bytes) throws IOException {
        PngHeader header = PngHeader.read(bytes);
        requireSize(header.width(), header.height());
        if (header.isTooShort()) {
            throw new RefusedPicture(Flaw.CUT_SHORT);
        }
        // An interlaced picture is unpacked whole when it is written.
        if (header.interlaced() && header.unpackedBytes() > Limits.INTERLACED_BYTES) {
            throw new RefusedPicture(Flaw.INTERLACED);
        }
        PngPixels.require(bytes, header);
        return picture(bytes, ArtworkFile.Kind.PNG, header.width(), header.height(), header.orientation());
    }

    private Found vector(PictureBytes bytes, ArtworkFile.Kind kind) throws IOException {
        VectorSize size = VectorSize.read(kind, path);
        return picture(bytes, kind, size.width(), size.height(), Orientation.TOP_LEFT);
    }

    private Found tiff(PictureBytes bytes) throws IOException {
        TiffHeader header = TiffHeader.read(bytes);
        requireSize(header.width(), header.height());
        requireRoom(header.unpackedBytes());
        OtherReaders.tiff(header, path);
        return picture(bytes, ArtworkFile.Kind.TIFF, header.width(), header.height(), header.orientation());
    }

    private Found webp(PictureBytes bytes) throws IOException {
        requireRoom(bytes.size());
        WebpHeader header = WebpHeader.read(bytes);
        requireSize(header.width(), header.height());
        if ((long) header.width() * header.height() > Limits.WEBP_PIXELS) {
            throw new RefusedPicture(Flaw.TOO_LARGE_TO_UNPACK);
        }
        OtherReaders.webp(path);
        return picture(bytes, ArtworkFile.Kind.WEBP, header.width(), header.height(), header.orientation());
    }

    private Found gif(PictureBytes bytes) throws IOException {
        GifHeader header = GifHeader.read(bytes);
        requireSize(header.width(), header.height());
        requireRoom((long) header.width() * header.height());
        GifPixels pixels = new GifPixels(bytes, header);
        byte[] row = new byte[header.width()];
        for (int i = 0; i < header.height(); i++) {
            pixels.next(row);
        }
        return picture(bytes, ArtworkFile.Kind.GIF, header.width(), header.height(), Orientation.TOP_LEFT);
    }

    private static void requireRoom(long unpackedBytes) throws RefusedPicture {
        if (unpackedBytes > Limits.DECODED_BYTES) {
            throw new RefusedPicture(Flaw.TOO_LARGE_TO_UNPACK);
        }
    }

    private static void requireSize(int width, int height) throws RefusedPicture {
        if (width == 0 || height == 0) {
            throw new RefusedPicture(Flaw.NO_PIXELS);
        }
        boolean large = Math.max(width, height) > Limits.PICTURE_SIDE || (long) width * height > Limits.PICTURE_PIXELS;
        if (large) {
            throw new RefusedPicture(Flaw.TOO_MANY_PIXELS);
        }
    }

    private Found picture(PictureBytes bytes, ArtworkFile.Kind kind, int width, int height, Orientation orientation) {
        return new Found.Picture(new ArtworkFile(name, path, bytes.size(), kind, width, height, orientation));
    }
}
