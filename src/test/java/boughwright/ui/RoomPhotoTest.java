package boughwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.photo.Drawn;
import java.awt.Color;
import org.junit.jupiter.api.Test;

class RoomPhotoTest {

    private final RoomPhoto photo = new RoomPhoto();

    private static byte[] redOnPaper() {
        return Drawn.png(Drawn.picture(300, 300, Color.WHITE, pen -> {
            pen.setColor(new Color(0xa8, 0x1c, 0x28));
            pen.fillRect(60, 60, 180, 180);
        }));
    }

    @Test
    void before_a_photo_there_are_no_colours_and_nothing_to_say() {
        assertThat(photo.colours()).isEmpty();
        assertThat(photo.palette()).isEmpty();
        assertThat(photo.refusal()).isEmpty();
        assertThat(photo.hasBackground()).isFalse();
    }

    @Test
    void the_background_counts_until_it_is_left_out() {
        photo.look(redOnPaper());
        assertThat(photo.hasBackground()).isTrue();
        assertThat(photo.colours().orElseThrow().colours()).hasSize(2);
        photo.leaveBackground(true);
        assertThat(photo.colours().orElseThrow().colours()).hasSize(1);
        assertThat(photo.palette().orElseThrow().palette().main().hex()).isEqualTo("#a81c28");
    }

    @Test
    void a_room_without_an_even_ground_is_not_asked_about_it() {
        photo.leaveBackground(true);
        photo.look(Drawn.jpeg(Drawn.room(800, 600), 0.85, false));
        assertThat(photo.hasBackground()).isFalse();
        assertThat(photo.colours().orElseThrow().colours()).hasSize(5);
    }

    @Test
    void a_picture_that_is_refused_leaves_the_colours_of_the_one_before() {
        photo.look(redOnPaper());
        photo.look("not a picture".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        assertThat(photo.refusal()).contains("not a picture");
        assertThat(photo.colours()).isPresent();
        photo.look(redOnPaper());
        assertThat(photo.refusal()).isEmpty();
    }
}
