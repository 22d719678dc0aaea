package boughwright.publishing;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.publishing.HousePassword.Entry;
import java.time.Duration;
import org.junit.jupiter.api.Test;

class HousePasswordTest {

    private static final String PASSWORD = "eleven pipers piping";

    @Test
    void the_first_password_is_chosen_by_whoever_can_read_the_log() {
        OpenShop shop = OpenShop.open();
        String word = shop.account.firstWord();
        assertThat(shop.account.hasPassword()).isFalse();
        assertThat(shop.account.enter(PASSWORD)).as("nobody has chosen one").isEqualTo(Entry.WRONG);
        assertThat(shop.account.begin("not the word", PASSWORD)).isEqualTo(Entry.WRONG);
        assertThat(shop.account.begin(" " + word.toUpperCase() + " ", PASSWORD)).isEqualTo(Entry.IN);
        assertThat(shop.account.enter(PASSWORD)).isEqualTo(Entry.IN);
        assertThat(shop.account.begin(word, "another long password")).as("only the first is chosen like that").isEqualTo(Entry.WRONG);
        assertThat(shop.database().sql("select password from manager").query(String.class).single()).startsWith("{bcrypt}").doesNotContain(PASSWORD);
    }

    @Test
    void five_wrong_tries_close_the_door_for_a_minute() {
        OpenShop shop = OpenShop.open();
        shop.account.begin(shop.account.firstWord(), PASSWORD);
        for (int i = 0; i < 5; i++) {
            assertThat(shop.account.enter("guess " + i)).isEqualTo(Entry.WRONG);
        }
        assertThat(shop.account.enter(PASSWORD)).isEqualTo(Entry.WAIT);
        shop.clock.forward(Duration.ofSeconds(61));
        assertThat(shop.account.enter(PASSWORD)).isEqualTo(Entry.IN);
    }

    @Test
    void a_password_is_long_enough_and_not_longer_than_can_be_kept_whole() {
        assertThat(HousePassword.takes("short")).isFalse();
        assertThat(HousePassword.takes(PASSWORD)).isTrue();
        assertThat(HousePassword.takes("ä".repeat(37))).isFalse();
    }
}
