package org.lapwright.app.files.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.GpsDirectory;
import com.drew.metadata.jpeg.JpegCommentDirectory;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What becomes of a photo; what files say beside their pixels is read by metadata-extractor. */
class PhotoTest {
    private static Metadata notes(byte[] file) throws Exception {
        return ImageMetadataReader.readMetadata(new ByteArrayInputStream(file));
    }

    @Test
    void placeOwnerAndCommentAreGone() throws Exception {
        byte[] camera = Pictures.jpegOfACamera(64, 48, 1);
        GpsDirectory place = notes(camera).getFirstDirectoryOfType(GpsDirectory.class);
        assertThat(place.getRationalArray(GpsDirectory.TAG_LATITUDE)).hasSize(3);
        assertThat(notes(camera)
                        .getFirstDirectoryOfType(ExifIFD0Directory.class)
                        .getString(ExifIFD0Directory.TAG_IMAGE_DESCRIPTION))
                .isEqualTo(Pictures.SECRET);
        assertThat(notes(camera).containsDirectoryOfType(JpegCommentDirectory.class))
                .isTrue();

        byte[] kept = Photo.encodedAnew(camera);
        assertThat(notes(kept).containsDirectoryOfType(GpsDirectory.class)).isFalse();
        assertThat(notes(kept).getDirectoriesOfType(ExifDirectoryBase.class)).isEmpty();
        assertThat(notes(kept).containsDirectoryOfType(JpegCommentDirectory.class))
                .isFalse();
        assertThat(new String(kept, StandardCharsets.ISO_8859_1)).doesNotContain("Exif", "owner");
    }

    /** The table of EXIF 2.32, tag 0112: the side of the picture that the first row, and the first column, is. */
    @ParameterizedTest
    @CsvSource({
        "1,top,left",
        "2,top,right",
        "3,bottom,right",
        "4,bottom,left",
        "5,left,top",
        "6,right,top",
        "7,right,bottom",
        "8,left,bottom"
    })
    void itStandsUprightHoweverTheCameraWasHeld(int orientation, String firstRow, String firstColumn) throws Exception {
        BufferedImage kept = Pictures.decoded(Photo.encodedAnew(Pictures.jpegOfACamera(64, 32, orientation)));
        boolean lay = orientation >= 5;
        assertThat(kept.getWidth()).isEqualTo(lay ? 32 : 64);
        assertThat(kept.getHeight()).isEqualTo(lay ? 64 : 32);
        for (int row = 0; row < 2; row++) {
            for (int column = 0; column < 2; column++) {
                List<String> sides = List.of(
                        row == 0 ? firstRow : opposite(firstRow), column == 0 ? firstColumn : opposite(firstColumn));
                int x = sides.contains("left") ? kept.getWidth() / 4 : 3 * kept.getWidth() / 4;
                int y = sides.contains("top") ? kept.getHeight() / 4 : 3 * kept.getHeight() / 4;
                assertThat(near(new Color(kept.getRGB(x, y)), Pictures.CORNERS[2 * row + column]))
                        .as("row %d, column %d is %s", row, column, sides)
                        .isTrue();
            }
        }
    }

    private static String opposite(String side) {
        return switch (side) {
            case "top" -> "bottom";
            case "bottom" -> "top";
            case "left" -> "right";
            default -> "left";
        };
    }

    private static boolean near(Color one, Color other) {
        return Math.abs(one.getRed() - other.getRed()) < 60
                && Math.abs(one.getGreen() - other.getGreen()) < 60
                && Math.abs(one.getBlue() - other.getBlue()) < 60;
    }

    @ParameterizedTest
    @ValueSource(strings = {"jpeg", "png"})
    void aLargeOneBecomesSmall(String format) throws Exception {
        byte[] kept = Photo.encodedAnew(Pictures.encoded(Pictures.quarters(4000, 3000), format));
        BufferedImage small = Pictures.decoded(kept);
        assertThat(small.getWidth()).isEqualTo(Photo.LONGEST_SIDE);
        assertThat(small.getHeight()).isEqualTo(960);
        assertThat(near(new Color(small.getRGB(10, 10)), Color.RED)).isTrue();
        assertThat(kept).startsWith((byte) 0xFF, (byte) 0xD8, (byte) 0xFF).hasSizeLessThan(500_000);
    }

    @Test
    void aPictureThatCanBeSeenThroughStandsOnWhite() throws Exception {
        BufferedImage clear = new BufferedImage(20, 20, BufferedImage.TYPE_INT_ARGB);
        BufferedImage kept = Pictures.decoded(Photo.encodedAnew(Pictures.encoded(clear, "png")));
        assertThat(near(new Color(kept.getRGB(10, 10)), Color.WHITE)).isTrue();
    }

    @Test
    void whatIsTooLargeIsRefusedBeforeItIsRead() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Photo.encodedAnew(Pictures.pngThatClaims(10_000, 5_001)))
                .withMessageContaining("10000 by 5001 pixels; at most 50 million");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Photo.encodedAnew(Pictures.pngThatClaims(Integer.MAX_VALUE, Integer.MAX_VALUE)));
        byte[] long16 = Arrays.copyOf(Pictures.jpegOfACamera(8, 8, 1), 16_000_000);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Photo.encodedAnew(long16))
                .withMessageContaining("16.0 MB; at most 15");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "GIF89a", "BM", "<svg xmlns='http://www.w3.org/2000/svg'/>", "\u00ff\u00d8", "PNG"})
    void whatBeginsOtherwiseIsNoPhoto(String begins) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Photo.encodedAnew(begins.getBytes(StandardCharsets.ISO_8859_1)))
                .withMessageContaining("neither a JPEG nor a PNG");
    }

    /** Seeded: cut off and spoiled files are a picture or a sentence, never a fault. */
    @Test
    void spoiledFilesAreAPictureOrASentence() {
        Random random = new Random(11);
        byte[][] whole = {Pictures.jpegOfACamera(64, 48, 6), Pictures.encoded(Pictures.quarters(64, 48), "png")};
        int refused = 0;
        for (int i = 0; i < 600; i++) {
            byte[] file = whole[i % 2].clone();
            for (int k = random.nextInt(6); k >= 0; k--) {
                file[3 + random.nextInt(file.length - 3)] = (byte) random.nextInt(256);
            }
            file = random.nextInt(3) == 0 ? Arrays.copyOf(file, 3 + random.nextInt(file.length - 3)) : file;
            try {
                assertThat(Photo.encodedAnew(file)).startsWith((byte) 0xFF, (byte) 0xD8);
            } catch (IllegalArgumentException sentence) {
                refused++;
                assertThat(sentence.getMessage()).contains("photo");
            }
        }
        assertThat(refused).isBetween(1, 599);
    }
}
