package boughwright.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;

class PhotoRefusalsTest {

    private static Refusal refused(byte[] picture) {
        assertThat(Photo.read(picture, Ground.DROP, 4)).isInstanceOf(PhotoReading.Refused.class);
        return ((PhotoReading.Refused) Photo.read(picture, Ground.DROP, 4)).why();
    }

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    /** A PNG that promises a size and holds nothing (PNG specification, second edition, 11.2.2). */
    private static byte[] png(int width, int height) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.write(text("\u0089PNG\r\n\u001A\n"));
        ByteArrayOutputStream head = new ByteArrayOutputStream();
        DataOutputStream header = new DataOutputStream(head);
        header.write(text("IHDR"));
        header.writeInt(width);
        header.writeInt(height);
        header.write(new byte[] {8, 6, 0, 0, 0});
        CRC32 crc = new CRC32();
        crc.update(head.toByteArray());
        out.writeInt(13);
        out.write(head.toByteArray());
        out.writeInt((int) crc.getValue());
        return bytes.toByteArray();
    }

    /** The frame's header of a JPEG changed (ITU-T T.81, B.2.2): height, width, number of components. */
    private static byte[] withFrame(byte[] jpeg, int height, int width, int components) {
        byte[] changed = jpeg.clone();
        for (int i = 0; i < changed.length - 10; i++) {
            if ((changed[i] & 255) == 0xFF && ((changed[i + 1] & 255) == 0xC0 || (changed[i + 1] & 255) == 0xC2)) {
                changed[i + 5] = (byte) (height >> 8);
                changed[i + 6] = (byte) height;
                changed[i + 7] = (byte) (width >> 8);
                changed[i + 8] = (byte) width;
                changed[i + 9] = (byte) components;
                return changed;
            }
        }
        throw new IllegalArgumentException("no frame");
    }

    private static BufferedImage room() {
        return Drawn.room(400, 300);
    }

    @Test
    void nothing_text_and_kinds_that_are_not_read_are_each_told() {
        assertThat(refused(new byte[0])).isEqualTo(Refusal.EMPTY);
        assertThat(refused(text("Dear shop, this is called photo.jpg but it is a letter."))).isEqualTo(Refusal.NO_PICTURE);
        assertThat(refused(text("%PDF-1.7"))).isEqualTo(Refusal.NO_PICTURE);
        assertThat(refused(text("RIFF\0\0\0\0WEBPVP8 "))).isEqualTo(Refusal.OTHER_KIND);
        assertThat(refused(text("\0\0\0\u0018ftypheic"))).isEqualTo(Refusal.OTHER_KIND);
        assertThat(refused(text("II*\0"))).isEqualTo(Refusal.OTHER_KIND);
        assertThat(refused(text("<svg xmlns='http://www.w3.org/2000/svg'/>"))).isEqualTo(Refusal.OTHER_KIND);
        assertThat(refused(Drawn.png(new BufferedImage(20, 20, BufferedImage.TYPE_INT_ARGB)))).isEqualTo(Refusal.CLEAR);
    }

    @Test
    void too_many_bytes_and_a_header_that_promises_too_many_pixels_are_refused_before_anything_is_unpacked() throws IOException {
        assertThat(refused(new byte[(int) Photo.MOST_BYTES + 1])).isEqualTo(Refusal.TOO_LARGE);
        assertThat(refused(png(60_000, 60_000))).isEqualTo(Refusal.TOO_MANY_PIXELS);
        assertThat(refused(png(Integer.MAX_VALUE, Integer.MAX_VALUE))).isEqualTo(Refusal.TOO_MANY_PIXELS);
        assertThat(refused(png(20_001, 1))).isEqualTo(Refusal.TOO_MANY_PIXELS);
        assertThat(refused(png(10_000, 8_001))).isEqualTo(Refusal.TOO_MANY_PIXELS);
        assertThat(refused(png(10_000, 8_000))).isEqualTo(Refusal.BROKEN);
        assertThat(refused(png(0, 10))).isEqualTo(Refusal.BROKEN);
        assertThat(refused(withFrame(Drawn.jpeg(room(), 0.8, false), 60_000, 60_000, 3))).isEqualTo(Refusal.TOO_MANY_PIXELS);
        // One of several passes would be kept whole in memory.
        assertThat(refused(withFrame(Drawn.jpeg(room(), 0.8, true), 6_000, 6_000, 3))).isEqualTo(Refusal.TOO_MANY_PIXELS);
    }

    @Test
    void files_that_end_early_are_refused_wherever_they_end() {
        for (byte[] file : List.of(Drawn.jpeg(room(), 0.8, false), Drawn.jpeg(room(), 0.8, true), Drawn.png(room()), Drawn.file(room(), "gif"))) {
            for (double part : new double[] {0.02, 0.1, 0.5, 0.9, 0.999}) {
                assertThat(refused(Arrays.copyOf(file, (int) (part * file.length)))).as(part + " of " + PictureKind.of(file)).isEqualTo(Refusal.BROKEN);
            }
        }
    }

    @Test
    void printing_inks_and_endless_passes_are_refused() {
        byte[] jpeg = Drawn.jpeg(room(), 0.8, false);
        assertThat(refused(withFrame(jpeg, 300, 400, 4))).isEqualTo(Refusal.INKS);
        byte[] progressive = Drawn.jpeg(room(), 0.8, true);
        ByteArrayOutputStream passes = new ByteArrayOutputStream();
        passes.write(progressive, 0, progressive.length - 2);
        for (int i = 0; i < 100; i++) {
            passes.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xDA, 0, 8, 1, 1, 0, 1, 63, 0x10, 0});
        }
        passes.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xD9});
        assertThat(refused(passes.toByteArray())).isEqualTo(Refusal.BROKEN);
    }

    @Test
    void what_follows_the_end_of_a_jpeg_does_no_harm() {
        byte[] jpeg = Drawn.jpeg(room(), 0.8, false);
        byte[] with = Arrays.copyOf(jpeg, jpeg.length + 5_000);
        assertThat(Photo.read(with, Ground.KEEP, 5)).isEqualTo(Photo.read(jpeg, Ground.KEEP, 5));
    }

    @Test
    void whatever_is_broken_in_a_file_there_is_an_answer() {
        SplittableRandom random = new SplittableRandom(21);
        List<byte[]> files = List.of(Drawn.jpeg(room(), 0.8, false), Drawn.jpeg(room(), 0.8, true), Drawn.png(room()), Drawn.file(room(), "gif"));
        for (int i = 0; i < 600; i++) {
            byte[] file = files.get(i % files.size()).clone();
            for (int k = 0; k <= random.nextInt(12); k++) {
                file[random.nextInt(i % 2 == 0 ? 700 : file.length)] = (byte) random.nextInt(256);
            }
            assertThat(Photo.read(file, Ground.DROP, 4)).isNotNull();
        }
    }

    @Test
    void each_refusal_says_how_to_mend_it() {
        for (Refusal refusal : Refusal.values()) {
            assertThat(refusal.sentence()).isNotBlank().doesNotContain("{");
        }
        assertThat(Refusal.TOO_LARGE.sentence()).contains("25 MB");
        assertThat(Refusal.TOO_MANY_PIXELS.sentence()).contains("80 million", "20000 on a side");
    }

    @Test
    void only_two_to_five_colours_can_be_asked_for() {
        byte[] picture = Drawn.png(Drawn.picture(10, 10, Color.RED, pen -> { }));
        assertThatThrownBy(() -> Photo.read(picture, Ground.KEEP, 1)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("not 1");
        assertThatThrownBy(() -> Photo.read(picture, Ground.KEEP, 6)).isInstanceOf(IllegalArgumentException.class);
    }
}
