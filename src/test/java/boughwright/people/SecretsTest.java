package boughwright.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SecretsTest {

    @ParameterizedTest
    @ValueSource(strings = {"1234", "0000", "1111", "4321", "9876", "7890", "8901", "1212", "6969", "1122", "2000", "12345678", "77777777"})
    void a_pin_that_anybody_would_try_first_is_refused(String pin) {
        assertThat(Secrets.pin(pin)).contains(Secrets.Fault.PIN_EASY);
    }

    @ParameterizedTest
    @ValueSource(strings = {"407", "123456789", "40a1", "", "٤٠٧١", " 4071"})
    void a_pin_has_four_to_eight_digits(String pin) {
        assertThat(Secrets.pin(pin)).contains(Secrets.Fault.PIN_SHAPE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"4071", "1235", "90562", "40719356"})
    void any_other_pin_is_taken(String pin) {
        assertThat(Secrets.pin(pin)).isEmpty();
    }

    /** The first are from lists of the passwords found most often in leaks, as NCSC and others publish them; from memory. */
    @ParameterizedTest
    @ValueSource(strings = {"password", "12345678", "qwertyuiop", "iloveyou", "password1", "Password123", "11111111", "football1", "aaaaaaaaaa", "boughwright", "Ada Lovelace",
        "lovelace1"})
    void a_password_that_anybody_would_try_first_is_refused(String password) {
        assertThat(People.fault(password, "Ada Lovelace")).contains(Secrets.Fault.PASSWORD_COMMON);
    }

    @Test
    void a_password_is_long_enough_and_not_longer_than_can_be_kept_whole() {
        assertThat(Secrets.password("x7#kQ2!", List.of())).contains(Secrets.Fault.PASSWORD_SHORT);
        assertThat(Secrets.password("x7#kQ2!p", List.of())).isEmpty();
        assertThat(Secrets.password("eleven pipers piping", List.of())).isEmpty();
        assertThat(Secrets.password("ä".repeat(37), List.of())).as("74 bytes").contains(Secrets.Fault.PASSWORD_LONG);
        assertThat(Secrets.password("x7#kQ2!p".repeat(9), List.of())).as("72 bytes").isEmpty();
    }
}
