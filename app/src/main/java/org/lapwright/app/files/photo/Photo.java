package org.lapwright.app.files.photo;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.MetadataException;
import com.drew.metadata.exif.ExifIFD0Directory;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * Makes of a photo, as a camera wrote it, a JPEG of at most {@value #LONGEST_SIDE} pixels a side, upright, from its pixels alone: place, time,
 * camera and whatever else the file said are gone.
 *
 * <p>What the file is goes by its first bytes, never by its name. How many pixels it has is known before any of them is read, and
 * of a large one only every second, third … is kept. One at a time, for the memory that takes.
 */
public final class Photo {
    /** Longest file. */
    public static final int MOST_BYTES = 15_000_000;

    /** Most pixels. */
    public static final long MOST_PIXELS = 50_000_000;

    /** Longest side of what is made of it. */
    public static final int LONGEST_SIDE = 1280;

    private static final float QUALITY = 0.82f;
    private static final int UPRIGHT = 1;
    private static final byte[] JPEG = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF};
    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

    private Photo() {}

    /**
     * The photo encoded anew.
     *
     * @param file as it was sent
     * @throws IllegalArgumentException with a sentence for the racer, if it is no photo that can be taken
     */
    public static synchronized byte[] encodedAnew(byte[] file) {
        if (file.length > MOST_BYTES) {
            throw new IllegalArgumentException(
                    "the photo has %.1f MB; at most 15 fit: send a smaller one".formatted(file.length / 1e6));
        }
        String format = format(file)
                .orElseThrow(() -> new IllegalArgumentException(
                        "the file begins like neither a JPEG nor a PNG; send a photo of one of these kinds"));
        try {
            return written(small(upright(read(file, format), orientation(file))));
        } catch (IOException | RuntimeException broken) {
            if (broken instanceof TooManyPixels tooMany) {
                throw tooMany;
            }
            throw new IllegalArgumentException(
                    "the photo cannot be read: it is broken, cut off, or of a rare kind; send another one", broken);
        }
    }

    private static final class TooManyPixels extends IllegalArgumentException {
        private static final long serialVersionUID = 1;

        TooManyPixels(int wide, int high) {
            super("the photo has %d by %d pixels; at most 50 million fit: send a smaller one".formatted(wide, high));
        }
    }

    private static Optional<String> format(byte[] file) {
        if (beginsWith(file, JPEG)) {
            return Optional.of("jpeg");
        }
        return beginsWith(file, PNG) ? Optional.of("png") : Optional.empty();
    }

    private static boolean beginsWith(byte[] file, byte[] magic) {
        return file.length >= magic.length && Arrays.equals(file, 0, magic.length, magic, 0, magic.length);
    }

    private static BufferedImage read(byte[] file, String format) throws IOException {
        ImageReader reader = ImageIO.getImageReadersByFormatName(format).next();
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
            reader.setInput(in, true, true);
            int wide = reader.getWidth(0);
            int high = reader.getHeight(0);
            if ((long) wide * high > MOST_PIXELS) {
                throw new TooManyPixels(wide, high);
            }
            int every = Math.max(1, Math.max(wide, high) / (2 * LONGEST_SIDE));
            ImageReadParam param = reader.getDefaultReadParam();
            param.setSourceSubsampling(every, every, 0, 0);
            return reader.read(0, param);
        } finally {
            reader.dispose();
        }
    }

    /** How the camera was held, by EXIF 2.32, tag 0112; upright where the file does not say. */
    private static int orientation(byte[] file) throws IOException {
        try {
            ExifIFD0Directory exif = ImageMetadataReader.readMetadata(new ByteArrayInputStream(file), file.length)
                    .getFirstDirectoryOfType(ExifIFD0Directory.class);
            return exif != null && exif.containsTag(ExifIFD0Directory.TAG_ORIENTATION)
                    ? exif.getInt(ExifIFD0Directory.TAG_ORIENTATION)
                    : UPRIGHT;
        } catch (ImageProcessingException | MetadataException unreadable) {
            // A photo whose notes cannot be read still shows what it shows.
            return UPRIGHT;
        }
    }

    private static BufferedImage upright(BufferedImage image, int orientation) {
        int wide = image.getWidth();
        int high = image.getHeight();
        AffineTransform turn = new AffineTransform();
        switch (orientation) {
            case 2 -> turn.setTransform(-1, 0, 0, 1, wide, 0);
            case 3 -> turn.setTransform(-1, 0, 0, -1, wide, high);
            case 4 -> turn.setTransform(1, 0, 0, -1, 0, high);
            case 5 -> turn.setTransform(0, 1, 1, 0, 0, 0);
            case 6 -> turn.setTransform(0, 1, -1, 0, high, 0);
            case 7 -> turn.setTransform(0, -1, -1, 0, high, wide);
            case 8 -> turn.setTransform(0, -1, 1, 0, 0, wide);
            default -> turn.setToIdentity();
        }
        boolean lies = orientation >= 5 && orientation <= 8;
        return drawn(image, lies ? high : wide, lies ? wide : high, turn);
    }

    private static BufferedImage small(BufferedImage image) {
        double scale = Math.min(1, LONGEST_SIDE / (double) Math.max(image.getWidth(), image.getHeight()));
        return scale == 1
                ? image
                : drawn(
                        image,
                        Math.max(1, (int) Math.round(image.getWidth() * scale)),
                        Math.max(1, (int) Math.round(image.getHeight() * scale)),
                        AffineTransform.getScaleInstance(scale, scale));
    }

    /** On white, because a JPEG cannot be seen through. */
    private static BufferedImage drawn(BufferedImage image, int wide, int high, AffineTransform place) {
        BufferedImage drawn = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = drawn.createGraphics();
        brush.setColor(Color.WHITE);
        brush.fillRect(0, 0, wide, high);
        brush.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        brush.drawImage(image, place, null);
        brush.dispose();
        return drawn;
    }

    private static byte[] written(BufferedImage image) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(out)) {
            writer.setOutput(stream);
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(QUALITY);
            writer.write(null, new IIOImage(image, null, null), param);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }
}
