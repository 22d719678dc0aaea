package boughwright.people;

import com.nulabinc.zxcvbn.Zxcvbn;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** What a password and a PIN must be like. Safe for several threads. */
public final class Secrets {

    /** Characters. */
    public static final int SHORTEST_PASSWORD = 8;
    /** bcrypt takes no more bytes than this into account. */
    public static final int LONGEST_PASSWORD = 72;
    public static final int SHORTEST_PIN = 4;
    public static final int LONGEST_PIN = 8;

    private static final Zxcvbn GUESSER = new Zxcvbn();
    /** Of zxcvbn's scores from 0 to 4: fewer than a million guesses are 0 or 1, and all that many people choose is among them. */
    private static final int GUESSED_EARLY = 1;

    private Secrets() {
    }

    /** What is wrong with what was chosen. */
    public enum Fault {

        PASSWORD_SHORT, PASSWORD_LONG,
        /** One of the passwords that are tried first, or made of the person's name. */
        PASSWORD_COMMON,
        PIN_SHAPE,
        /** 1234, 0000, 1212 and their like. */
        PIN_EASY;

        /** Its message. */
        public String key() {
            return "people.fault." + name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }

    /** @param names words that whoever guesses would try first, such as the person's name */
    public static Optional<Fault> password(String password, List<String> names) {
        if (password.codePointCount(0, password.length()) < SHORTEST_PASSWORD) {
            return Optional.of(Fault.PASSWORD_SHORT);
        }
        if (tooLong(password)) {
            return Optional.of(Fault.PASSWORD_LONG);
        }
        boolean named = names.stream().anyMatch(name -> password.strip().equalsIgnoreCase(name.strip()));
        return named || GUESSER.measure(password, names).getScore() <= GUESSED_EARLY ? Optional.of(Fault.PASSWORD_COMMON) : Optional.empty();
    }

    static boolean tooLong(String password) {
        return password.getBytes(StandardCharsets.UTF_8).length > LONGEST_PASSWORD;
    }

    /** Digits, 4 to 8, at least three of them different, not in a row up or down. */
    public static Optional<Fault> pin(String pin) {
        if (!pin.matches("[0-9]{" + SHORTEST_PIN + "," + LONGEST_PIN + "}")) {
            return Optional.of(Fault.PIN_SHAPE);
        }
        return pin.chars().distinct().count() < 3 || row(pin, 1) || row(pin, 9) ? Optional.of(Fault.PIN_EASY) : Optional.empty();
    }

    /** Whether each digit is the one before it and so many more, 0 after 9. */
    private static boolean row(String pin, int step) {
        for (int i = 1; i < pin.length(); i++) {
            if ((pin.charAt(i) - pin.charAt(i - 1) + 10) % 10 != step) {
                return false;
            }
        }
        return true;
    }
}
