package boughwright.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.catalogue.Traits.Finish;
import boughwright.colour.Lab;
import boughwright.colour.Srgb;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Pictures that are drawn here, so that their colours and shares are known. Differences are CIEDE2000: about 1 is just visible. */
class PhotoColoursTest {

    private static final Color PAPER = new Color(0xfa, 0xfa, 0xf8);
    private static final Color RED = new Color(0xa8, 0x1c, 0x28);
    private static final Color GREEN = new Color(0x1f, 0x4d, 0x36);
    private static final Color GOLD = new Color(0xc9, 0x9a, 0x3c);

    private static PhotoColours product(byte[] picture) {
        return ((PhotoReading.Read) Photo.read(picture, Ground.DROP, 4)).colours();
    }

    private static PhotoColours room(byte[] picture) {
        return ((PhotoReading.Read) Photo.read(picture, Ground.KEEP, 5)).colours();
    }

    private static double difference(PhotoColour found, Color drawn) {
        return Lab.of(found.colour()).difference(Lab.of(new Srgb(drawn.getRed(), drawn.getGreen(), drawn.getBlue())));
    }

    /** Red, green and gold at 50, 35.7 and 14.3 of a hundred. */
    private static void flag(Graphics2D pen) {
        pen.setColor(RED);
        pen.fillRect(100, 100, 700, 350);
        pen.setColor(GREEN);
        pen.fillRect(100, 450, 700, 250);
        pen.setColor(GOLD);
        pen.fillRect(100, 700, 700, 100);
    }

    private static void isTheFlag(PhotoColours found, double most) {
        assertThat(found.colours()).hasSize(3);
        List<Color> drawn = List.of(RED, GREEN, GOLD);
        double[] shares = {0.5, 0.357, 0.143};
        for (int i = 0; i < 3; i++) {
            assertThat(difference(found.colours().get(i), drawn.get(i))).isLessThan(most);
            assertThat(found.colours().get(i).share()).isCloseTo(shares[i], within(0.01));
        }
        assertThat(found.setAside()).isCloseTo(1 - 0.49 / 0.81, within(0.01));
    }

    @Test
    void a_product_on_white_on_nothing_and_on_grey_paper_has_its_own_colours_and_shares() {
        isTheFlag(product(Drawn.png(Drawn.picture(900, 900, PAPER, PhotoColoursTest::flag))), 0.6);
        isTheFlag(product(Drawn.png(Drawn.picture(900, 900, null, PhotoColoursTest::flag))), 0.6);
        isTheFlag(product(Drawn.png(Drawn.picture(900, 900, new Color(0x96, 0x96, 0x98), PhotoColoursTest::flag))), 0.6);
    }

    @Test
    void noise_and_the_traces_of_jpeg_move_colours_by_little() {
        BufferedImage noisy = Drawn.noisy(Drawn.picture(900, 900, PAPER, PhotoColoursTest::flag), 6, 11);
        isTheFlag(product(Drawn.jpeg(noisy, 0.6, false)), 3);
        isTheFlag(product(Drawn.jpeg(noisy, 0.6, true)), 3);
        isTheFlag(product(Drawn.file(noisy, "gif")), 6);
    }

    @Test
    void a_room_of_four_walls_keeps_them_all() {
        Color[] walls = {new Color(0xd9, 0xc8, 0xa8), new Color(0x3a, 0x5a, 0x40), new Color(0x8a, 0x30, 0x30), new Color(0x22, 0x2b, 0x3c)};
        int[] from = {0, 400, 700, 900, 1000};
        BufferedImage room = Drawn.picture(1000, 800, Color.BLACK, pen -> {
            for (int i = 0; i < 4; i++) {
                pen.setColor(walls[i]);
                pen.fillRect(from[i], 0, from[i + 1] - from[i], 800);
            }
        });
        PhotoColours found = room(Drawn.jpeg(Drawn.noisy(room, 8, 12), 0.85, false));
        assertThat(found.colours()).hasSize(4);
        for (int i = 0; i < 4; i++) {
            assertThat(difference(found.colours().get(i), walls[i])).isLessThan(1);
            assertThat(found.colours().get(i).share()).isCloseTo((from[i + 1] - from[i]) / 1000.0, within(0.005));
        }
        assertThat(found.setAside()).isZero();
        assertThat(found.finish()).isEmpty();
    }

    @Test
    void a_small_bright_cushion_is_found_beside_a_large_grey_wall() {
        PhotoColours found = room(Drawn.jpeg(Drawn.room(1600, 1200), 0.85, false));
        assertThat(found.colours()).hasSize(5);
        assertThat(found.colours()).anySatisfy(c -> {
            assertThat(difference(c, new Color(0xb3, 0x2a, 0x2e))).isLessThan(2);
            assertThat(c.share()).isCloseTo(0.019, within(0.003));
        });
        assertThat(found.colours().stream().mapToDouble(PhotoColour::share).sum()).isCloseTo(1, within(1e-9));
    }

    private static BufferedImage ball(Color ground, Color colour, double gloss, double sharp) {
        BufferedImage picture = Drawn.picture(900, 900, ground, pen -> { });
        Drawn.ball(picture, 450, 450, 330, colour, gloss, sharp);
        return picture;
    }

    @Test
    void light_and_shade_on_a_ball_are_one_colour_near_the_one_it_is_painted_in() {
        for (Color colour : List.of(RED, GREEN, GOLD, new Color(0x2b, 0x3f, 0x8f), new Color(0xb8, 0xba, 0xbc))) {
            PhotoColours found = product(Drawn.jpeg(Drawn.noisy(ball(PAPER, colour, 0, 1), 3, 13), 0.85, false));
            assertThat(found.colours()).as(String.valueOf(colour)).hasSize(1);
            assertThat(difference(found.colours().get(0), colour)).as(String.valueOf(colour)).isLessThan(4);
            assertThat(found.finish()).hasValueSatisfying(f -> assertThat(f.finish()).isEqualTo(Finish.MATTE));
        }
    }

    @Test
    void the_highlight_of_a_shiny_ball_is_no_colour_of_its_own() {
        for (Color colour : List.of(RED, GREEN, GOLD)) {
            PhotoColours found = product(Drawn.jpeg(Drawn.noisy(ball(PAPER, colour, 0.9, 60), 3, 14), 0.85, false));
            assertThat(difference(found.colours().get(0), colour)).isLessThan(4);
            assertThat(found.colours().get(0).share()).isGreaterThan(0.98);
            FinishHint finish = found.finish().orElseThrow();
            assertThat(finish.finish()).isEqualTo(Finish.SHINY);
            assertThat(finish.highlightShare()).isBetween(0.005, 0.05);
            assertThat(Lab.of(finish.highlight().orElseThrow()).l()).isGreaterThan(60);
            assertThat(finish.reason()).contains("bright patch");
        }
    }

    @Test
    void a_soft_sheen_a_mirror_and_flecks_are_told_apart() {
        assertThat(product(Drawn.png(ball(null, RED, 0.25, 8))).finish().orElseThrow().finish()).isEqualTo(Finish.SATIN);
        assertThat(product(Drawn.png(mirror())).finish().orElseThrow().finish()).isEqualTo(Finish.METALLIC);
        assertThat(product(Drawn.jpeg(glitter(), 0.85, false)).finish().orElseThrow().finish()).isEqualTo(Finish.GLITTER);
    }

    /** A gold ball that mirrors dark and light things in bands. */
    private static BufferedImage mirror() {
        BufferedImage picture = Drawn.picture(900, 900, PAPER, pen -> { });
        for (int y = -330; y <= 330; y++) {
            for (int x = -330; x <= 330; x++) {
                if (Math.hypot(x, y) <= 330) {
                    double wave = 0.5 + 0.5 * Math.sin(y / 40.0 + Math.hypot(x, y) / 165);
                    double light = Math.pow(0.08 + 0.92 * wave * wave, 0.45);
                    picture.setRGB(450 + x, 450 + y, new Color((int) (242 * light), (int) (199 * light), (int) (107 * light)).getRGB());
                }
            }
        }
        return picture;
    }

    private static BufferedImage glitter() {
        BufferedImage picture = ball(PAPER, GOLD, 0, 1);
        SplittableRandom random = new SplittableRandom(15);
        for (int y = 120; y < 780; y++) {
            for (int x = 120; x < 780; x++) {
                if (Math.hypot(x - 450, y - 450) < 329 && random.nextDouble() < 0.12) {
                    picture.setRGB(x, y, random.nextBoolean() ? 0xfff4d8 : 0x4a3510);
                }
            }
        }
        return picture;
    }

    @Test
    void printed_dots_and_stripes_in_two_reds_stay_two_colours() {
        PhotoColours dots = product(Drawn.jpeg(Drawn.picture(900, 900, PAPER, pen -> {
            pen.setColor(RED);
            pen.fillRect(150, 150, 600, 600);
            pen.setColor(Color.WHITE);
            for (int i = 0; i < 64; i++) {
                pen.fillOval(180 + 70 * (i % 8), 180 + 70 * (i / 8), 34, 34);
            }
        }), 0.85, false));
        assertThat(dots.colours()).hasSize(2);
        assertThat(dots.colours().get(1).share()).isCloseTo(64 * Math.PI * 17 * 17 / 360_000, within(0.02));
        Color wine = new Color(0x5c, 0x0f, 0x16);
        PhotoColours stripes = product(Drawn.jpeg(Drawn.picture(900, 900, PAPER, pen -> {
            pen.setColor(RED);
            pen.fillRect(150, 150, 600, 600);
            pen.setColor(wine);
            for (int i = 0; i < 10; i++) {
                pen.fillRect(150 + 60 * i, 150, 30, 600);
            }
        }), 0.85, false));
        assertThat(stripes.colours()).hasSize(2).anySatisfy(c -> assertThat(difference(c, wine)).isLessThan(2))
                .anySatisfy(c -> assertThat(difference(c, RED)).isLessThan(2));
    }

    @Test
    void the_shadow_under_a_product_goes_with_the_paper() {
        BufferedImage picture = Drawn.picture(900, 900, new Color(238, 236, 230), pen -> {
            for (int i = 60; i > 0; i--) {
                pen.setColor(new Color(90, 88, 84, 6));
                pen.fillOval(200 - i * 2, 690 - i, 500 + 4 * i, 60 + 2 * i);
            }
        });
        Drawn.ball(picture, 450, 450, 280, GREEN, 0.8, 50);
        PhotoColours found = product(Drawn.jpeg(Drawn.noisy(picture, 2, 16), 0.85, false));
        assertThat(found.colours()).hasSize(1);
        assertThat(found.setAside()).isCloseTo(1 - Math.PI * 280 * 280 / 810_000, within(0.01));
    }

    @Test
    void white_inside_a_wreath_stays_and_a_white_ball_on_white_paper_is_not_lost() {
        PhotoColours wreath = product(Drawn.png(Drawn.picture(900, 900, Color.WHITE, pen -> {
            pen.setStroke(new BasicStroke(140));
            pen.setColor(GREEN);
            pen.drawOval(200, 200, 500, 500);
        })));
        assertThat(wreath.colours()).hasSize(2);
        assertThat(wreath.colours().get(1).colour()).isEqualTo(new Srgb(255, 255, 255));
        PhotoColours ball = product(Drawn.jpeg(ball(Color.WHITE, Color.WHITE, 0.3, 20), 0.85, false));
        assertThat(Lab.of(ball.colours().get(0).colour()).l()).isGreaterThan(85);
    }

    @Test
    void one_flat_colour_is_one_colour_whatever_is_asked() {
        byte[] flat = Drawn.png(Drawn.picture(300, 200, RED, pen -> { }));
        assertThat(room(flat).colours()).containsExactly(new PhotoColour(new Srgb(0xa8, 0x1c, 0x28), 1));
        assertThat(product(flat).colours()).containsExactly(new PhotoColour(new Srgb(0xa8, 0x1c, 0x28), 1));
        assertThat(product(Drawn.png(Drawn.picture(1, 1, RED, pen -> { }))).colours()).hasSize(1);
    }

    @Test
    void of_more_colours_than_are_asked_for_the_ones_that_one_would_miss_stay() {
        byte[] flag = Drawn.png(Drawn.picture(900, 900, PAPER, PhotoColoursTest::flag));
        PhotoColours two = ((PhotoReading.Read) Photo.read(flag, Ground.DROP, 2)).colours();
        assertThat(two.colours()).hasSize(2);
        assertThat(two.colours().get(0).share() + two.colours().get(1).share()).isCloseTo(1, within(1e-9));
    }

    @Test
    void the_same_bytes_give_the_same_answer_and_a_turned_picture_nearly_the_same() {
        BufferedImage room = Drawn.room(800, 600);
        byte[] jpeg = Drawn.jpeg(room, 0.85, false);
        assertThat(Photo.read(jpeg, Ground.KEEP, 5)).isEqualTo(Photo.read(jpeg.clone(), Ground.KEEP, 5));
        BufferedImage turned = new BufferedImage(600, 800, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < 600; y++) {
            for (int x = 0; x < 800; x++) {
                turned.setRGB(599 - y, x, room.getRGB(x, y));
            }
        }
        List<PhotoColour> one = room(Drawn.png(room)).colours();
        List<PhotoColour> other = room(Drawn.png(turned)).colours();
        for (int i = 0; i < one.size(); i++) {
            assertThat(Lab.of(one.get(i).colour()).difference(Lab.of(other.get(i).colour()))).isLessThan(1);
        }
    }

    /** A file of linear light says so in its profile (the JDK's own): 128 of 255 linear is 188 in sRGB by IEC 61966-2-1. */
    @Test
    void a_profile_in_the_file_is_heeded() throws Exception {
        byte[] jpeg = Drawn.jpeg(Drawn.picture(200, 200, new Color(128, 128, 128), pen -> { }), 1, false);
        byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int afterJfif = 4 + ((jpeg[4] & 255) << 8 | jpeg[5] & 255);
        int length = 16 + profile.length;
        out.write(jpeg, 0, afterJfif);
        out.write(new byte[] {(byte) 0xFF, (byte) 0xE2, (byte) (length >> 8), (byte) length});
        out.write("ICC_PROFILE\0".getBytes(StandardCharsets.ISO_8859_1));
        out.write(new byte[] {1, 1});
        out.write(profile);
        out.write(jpeg, afterJfif, jpeg.length - afterJfif);
        assertThat(difference(room(out.toByteArray()).colours().get(0), new Color(188, 188, 188))).isLessThan(0.5);
    }

    @Test
    void grey_files_are_as_grey_as_a_browser_shows_them() {
        BufferedImage grey = new BufferedImage(50, 50, BufferedImage.TYPE_BYTE_GRAY);
        BufferedImage fine = new BufferedImage(50, 50, BufferedImage.TYPE_USHORT_GRAY);
        for (int i = 0; i < 2500; i++) {
            grey.getRaster().setSample(i % 50, i / 50, 0, 128);
            fine.getRaster().setSample(i % 50, i / 50, 0, 128 * 257);
        }
        for (byte[] file : List.of(Drawn.png(grey), Drawn.png(fine), Drawn.jpeg(grey, 1, false))) {
            assertThat(room(file).colours().get(0).colour()).isEqualTo(new Srgb(128, 128, 128));
        }
    }

    @Test
    void at_most_fifty_thousand_pixels_are_looked_at_of_a_picture_of_any_shape() {
        for (int[] size : new int[][] {{4032, 3024}, {8000, 10_000}, {20_000, 3}, {3, 20_000}, {224, 223}, {1, 1}}) {
            int step = PictureFile.step(size[0], size[1]);
            assertThat(Math.ceil((double) size[0] / step) * Math.ceil((double) size[1] / step)).isLessThanOrEqualTo(50_000);
        }
        assertThat(PictureFile.step(200, 250)).isEqualTo(1);
    }
}
