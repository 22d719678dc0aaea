package boughwright.people;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/** Marks and words that nobody guesses, and what is kept of them. */
final class Digest {

    private static final String LETTERS = "abcdefghjkmnpqrstuvwxyz23456789";
    private static final SecureRandom RANDOM = new SecureRandom();

    private Digest() {
    }

    /** SHA-256 in hexadecimal; enough for what has 128 random bits, and for nothing else. */
    static String of(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java knows SHA-256", impossible);
        }
    }

    /** 128 random bits, as a cookie or an address may hold them. */
    static String token() {
        byte[] bytes = new byte[16];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** Twelve letters and digits without look-alikes, in three groups: 59 random bits. */
    static String word() {
        StringBuilder word = new StringBuilder();
        for (int i = 0; i < 12; i++) {
            word.append(i == 4 || i == 8 ? "-" : "").append(LETTERS.charAt(RANDOM.nextInt(LETTERS.length())));
        }
        return word.toString();
    }
}
