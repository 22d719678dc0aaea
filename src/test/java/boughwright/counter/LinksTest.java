package boughwright.counter;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.storage.Databases;
import java.time.Duration;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LinksTest {

    private static Links links(CounterFixture shop) {
        return new Links(shop.database, shop.terms, shop.settling, shop.clock);
    }

    @ParameterizedTest
    @EnumSource
    void a_link_opens_its_consultation_and_is_the_same_until_it_ends(Databases databases) {
        CounterFixture shop = new CounterFixture(databases);
        Links links = links(shop);
        shop.consultation("kelp-4-moss");
        Links.Link link = links.of("kelp-4-moss");
        assertThat(links.of("kelp-4-moss")).isEqualTo(link);
        assertThat(links.open(link.token())).hasValue("kelp-4-moss");
        assertThat(links.open("kelp-4-moss")).isEmpty();

        shop.clock.forward(Duration.ofDays(Terms.USUAL.number(Terms.Number.LINK_DAYS)));

        assertThat(links.open(link.token())).isEmpty();
        assertThat(links.of("kelp-4-moss").token()).isNotEqualTo(link.token());
    }

    @ParameterizedTest
    @EnumSource
    void a_link_that_is_revoked_opens_nothing_any_more(Databases databases) {
        CounterFixture shop = new CounterFixture(databases);
        Links links = links(shop);
        Links.Link link = links.of(shop.consultation("kelp-4-moss"));
        links.revoke("kelp-4-moss");
        assertThat(links.open(link.token())).isEmpty();
        assertThat(links.known("kelp-4-moss")).isEmpty();
    }

    /** OWASP ASVS 5.0, chapter on self-contained and reference tokens, from memory: at least 128 bits from a secure generator. */
    @ParameterizedTest
    @EnumSource
    void every_link_has_128_bits_of_its_own(Databases databases) {
        CounterFixture shop = new CounterFixture(databases);
        Links links = links(shop);
        Set<String> tokens = new HashSet<>();
        int[] ones = new int[1];
        for (int i = 0; i < 100; i++) {
            String token = links.of(shop.consultation("code-" + i)).token();
            assertThat(token).matches("[0-9a-f]{32}");
            ones[0] += new java.math.BigInteger(token, 16).bitCount();
            tokens.add(token);
        }
        assertThat(tokens).hasSize(100);
        // 12,800 fair bits: 6,400 ones, five standard deviations of 57 to either side.
        assertThat(ones[0]).isBetween(6_400 - 283, 6_400 + 283);
    }
}
