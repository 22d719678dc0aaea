package boughwright.counter;

import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/** Where a phone finds the page to follow at home: under the shop's own address, or the one by which it was asked. */
@Component
public class AtHomeAddress {

    private final String shop;

    /** @param shop as {@code https://trees.example}; empty for the address of the request */
    AtHomeAddress(@Value("${boughwright.address:}") String shop) {
        this.shop = shop.endsWith("/") ? shop.substring(0, shop.length() - 1) : shop;
    }

    /**
     * Only while a request is answered.
     *
     * @param token of a private link
     */
    public String of(String token) {
        String base = shop.isEmpty() ? ServletUriComponentsBuilder.fromCurrentContextPath().build().toUriString() : shop;
        return base + "/at-home/" + token;
    }
}
