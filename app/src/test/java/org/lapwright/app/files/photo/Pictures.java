package org.lapwright.app.files.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** Photos as a camera writes them. */
public final class Pictures {
    /** Top left, top right, bottom left, bottom right. */
    static final Color[] CORNERS = {Color.RED, Color.GREEN, Color.BLUE, Color.BLACK};

    /** A word in the notes of the camera. */
    public static final String SECRET = "owner of the camera";

    private Pictures() {}

    /** A picture with a colour in each quarter. */
    static BufferedImage quarters(int wide, int high) {
        BufferedImage image = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = image.createGraphics();
        for (int i = 0; i < 4; i++) {
            brush.setColor(CORNERS[i]);
            brush.fillRect(i % 2 * wide / 2, i / 2 * high / 2, wide / 2, high / 2);
        }
        brush.dispose();
        return image;
    }

    static byte[] encoded(BufferedImage image, String format) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, format, out);
        } catch (IOException impossible) {
            throw new AssertionError(impossible);
        }
        return out.toByteArray();
    }

    static BufferedImage decoded(byte[] file) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(file));
    }

    /** A JPEG with EXIF: how the camera was held, where it was, and a word on its owner; and a comment behind it. */
    public static byte[] jpegOfACamera(int wide, int high, int orientation) {
        byte[] plain = encoded(quarters(wide, high), "jpeg");
        byte[] exif = exif(orientation);
        byte[] comment = SECRET.getBytes(StandardCharsets.US_ASCII);
        ByteBuffer out = ByteBuffer.allocate(plain.length + exif.length + comment.length + 8);
        out.put(plain, 0, 2);
        out.putShort((short) 0xFFE1).putShort((short) (exif.length + 2)).put(exif);
        out.putShort((short) 0xFFFE).putShort((short) (comment.length + 2)).put(comment);
        out.put(plain, 2, plain.length - 2);
        return out.array();
    }

    /** By EXIF 2.32 (CIPA DC-008): tags 010E description, 0112 orientation, 8825 place; GPS tags 1 and 2. */
    private static byte[] exif(int orientation) {
        int firstEntries = 8 + 2 + 3 * 12 + 4;
        int gps = firstEntries + 20;
        int degrees = gps + 2 + 2 * 12 + 4;
        ByteBuffer tiff = ByteBuffer.allocate(degrees + 24).order(ByteOrder.LITTLE_ENDIAN);
        tiff.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(8);
        tiff.putShort((short) 3);
        entry(tiff, 0x010E, 2, 20).putInt(firstEntries);
        entry(tiff, 0x0112, 3, 1).putShort((short) orientation).putShort((short) 0);
        entry(tiff, 0x8825, 4, 1).putInt(gps);
        tiff.putInt(0);
        tiff.put((SECRET + "\0").getBytes(StandardCharsets.US_ASCII));
        tiff.putShort((short) 2);
        entry(tiff, 1, 2, 2).put(new byte[] {'N', 0, 0, 0});
        entry(tiff, 2, 5, 3).putInt(degrees);
        tiff.putInt(0);
        tiff.putInt(48).putInt(1).putInt(30).putInt(1).putInt(15).putInt(1);
        byte[] head = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
        return ByteBuffer.allocate(head.length + tiff.capacity())
                .put(head)
                .put(tiff.array())
                .array();
    }

    private static ByteBuffer entry(ByteBuffer tiff, int tag, int type, int count) {
        return tiff.putShort((short) tag).putShort((short) type).putInt(count);
    }

    /** A PNG whose head says that it has so many pixels, and which ends soon after. */
    static byte[] pngThatClaims(int wide, int high) {
        byte[] png = encoded(quarters(8, 8), "png");
        ByteBuffer.wrap(png).putInt(16, wide).putInt(20, high);
        CRC32 crc = new CRC32();
        crc.update(png, 12, 17);
        ByteBuffer.wrap(png).putInt(29, (int) crc.getValue());
        return png;
    }
}
