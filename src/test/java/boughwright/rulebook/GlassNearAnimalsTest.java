package boughwright.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.catalogue.CatalogueFixture;
import boughwright.catalogue.CatalogueReader;
import boughwright.catalogue.CatalogueReading;
import boughwright.catalogue.Product;
import boughwright.brief.Look;
import boughwright.needs.Demand;
import boughwright.needs.Trait;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GlassNearAnimalsTest {

    /** The cautions promise a kit without glass; the rules must then leave out every glass product of the shop. */
    @ParameterizedTest
    @ValueSource(strings = {"toddlers", "pets"})
    void no_glass_of_the_season_passes_where_the_caution_promises_none(String who) {
        Rulebook rulebook = RulebookFixture.shipped();
        Set<String> looks = rulebook.choices().looks().stream().map(Look::id).collect(Collectors.toSet());
        CatalogueReading season = new CatalogueReader(looks, rulebook.choices().currency()).read(CatalogueFixture.sample("season.csv"));
        List<Demand.Never> never = RulebookFixture.needs(RulebookFixture.briefWith("9 ft", List.of(), "\"household\": {\"" + who + "\": true}")).demands(Demand.Never.class);
        assertThat(((CatalogueReading.Read) season).catalogue().products())
                .filteredOn(product -> product.values(Trait.FINISH).contains("glass") || product.values(Trait.MATERIAL).contains("glass"))
                .allMatch(product -> never.stream().anyMatch(demand -> forbids(demand, product)));
    }

    private static boolean forbids(Demand.Never never, Product product) {
        boolean role = never.roles().isEmpty() || !Collections.disjoint(never.roles(), product.roles());
        return role && !Collections.disjoint(never.values(), product.values(never.trait()));
    }
}
