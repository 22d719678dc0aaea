package boughwright.publishing;

import static boughwright.publishing.OpenShop.moreRibbon;
import static org.assertj.core.api.Assertions.assertThat;

import boughwright.brief.BriefReader;
import boughwright.brief.BriefReading;
import boughwright.house.HouseRules;
import boughwright.house.ReferenceBrief;
import boughwright.needs.Adjustments;
import boughwright.needs.HouseNumber;
import boughwright.needs.Needs;
import boughwright.proposal.Designer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PublisherTest {

    private static final String NINE_FEET = "{\"tree\": {\"height\": \"9 ft\"}}";

    private static int rolls(Designer designer) {
        Needs needs = designer.rulebook().needs(((BriefReading.Read) new BriefReader(designer.rulebook().choices()).read(NINE_FEET)).brief(), Adjustments.NONE);
        return needs.need("ribbon/base-ribbon").orElseThrow().quantity();
    }

    private static List<String> refused(Publisher.Outcome outcome) {
        assertThat(outcome).isInstanceOf(Publisher.Outcome.Refused.class);
        return ((Publisher.Outcome.Refused) outcome).reasons();
    }

    @Test
    void the_rulebook_of_the_folder_is_the_first_edition_and_live() {
        OpenShop shop = OpenShop.open();
        assertThat(shop.shop.liveEdition()).isEqualTo(1);
        assertThat(shop.editions.all()).singleElement().satisfies(e -> {
            assertThat(e.id()).isEqualTo("winter-26");
            assertThat(e.texts()).hasSize(12);
        });
        assertThat(shop.again("").editions.all()).hasSize(1);
    }

    @Test
    void a_published_draft_is_live_at_once_and_no_draft_any_more() {
        OpenShop shop = OpenShop.open();
        shop.drafts.keep(1, moreRibbon(shop.live(), "3.2"), "Ada", java.util.Optional.empty());
        Designer before = shop.shop.designer();

        Publisher.Outcome outcome = shop.publish("Winter 26, second thoughts", r -> moreRibbon(r, "3.2"));

        assertThat(outcome).isEqualTo(new Publisher.Outcome.Published(2));
        assertThat(rolls(shop.shop.designer())).isEqualTo(4);
        assertThat(shop.shop.designer().rulebook().edition().title()).isEqualTo("Winter 26, second thoughts");
        assertThat(shop.drafts.open()).isEmpty();
        assertThat(rolls(before)).as("whoever has begun goes on as he began").isEqualTo(3);
        assertThat(rolls(shop.shop.designer("winter-26"))).as("a consultation of the former edition").isEqualTo(3);
        assertThat(rolls(shop.again("").shop.designer())).as("after a restart").isEqualTo(4);
    }

    @Test
    void a_draft_with_a_fault_is_refused_and_nothing_changes() {
        OpenShop shop = OpenShop.open();
        assertThat(refused(shop.publish("Broken", r -> r.withNumber(HouseNumber.HEAT_DISTANCE, "2 ft")))).singleElement().asString()
                .contains("never less").contains("NFPA");
        assertThat(refused(shop.publish("Broken", r -> r.changeGrid("clusters", "Base", g -> g.delete(2))))).singleElement().asString().contains("gap");
        assertThat(shop.editions.all()).hasSize(1);
        assertThat(shop.shop.liveEdition()).isEqualTo(1);
    }

    @Test
    void what_breaks_the_facts_of_the_trade_goes_live_only_when_it_has_been_thought_about() {
        OpenShop shop = OpenShop.open();
        assertThat(refused(shop.publish("Ribbon", r -> moreRibbon(r, "3.2"), shop.editions.today(), false, ""))).singleElement().asString().contains("think about");
        assertThat(shop.publisher.trial(moreRibbon(shop.live(), "3.2")).doubts()).anySatisfy(d -> assertThat(d).contains("9 ft").contains("usual practice is 3"));
        assertThat(shop.publisher.trial(shop.live()).doubts()).isEmpty();
    }

    @Test
    void what_breaks_a_reference_brief_goes_live_only_with_a_written_reason_which_is_kept() {
        OpenShop shop = OpenShop.open();
        shop.references.add(new ReferenceBrief("The tree in the window", NINE_FEET, new TreeMap<>(Map.of("ribbon/base-ribbon", 3))), "Ada");

        assertThat(refused(shop.publish("Ribbon", r -> moreRibbon(r, "3.2")))).singleElement().asString().contains("Write down why");
        assertThat(shop.publish("Ribbon", r -> moreRibbon(r, "3.2"), shop.editions.today(), true, "The new ribbon is narrower."))
                .isInstanceOf(Publisher.Outcome.Published.class);
        assertThat(shop.editions.edition(2)).hasValueSatisfying(e -> assertThat(e.override()).isEqualTo("The new ribbon is narrower."));
    }

    @Test
    void an_edition_that_begins_later_waits_for_its_day_and_needs_no_restart() {
        OpenShop shop = OpenShop.open();
        LocalDate day = shop.editions.today().plusDays(3);
        shop.publish("December", r -> moreRibbon(r, "3.2"), day, true, "");
        assertThat(shop.shop.liveEdition()).isEqualTo(1);
        shop.clock.forward(Duration.ofDays(2));
        assertThat(rolls(shop.shop.designer())).isEqualTo(3);
        shop.clock.forward(Duration.ofDays(1));
        assertThat(rolls(shop.shop.designer())).isEqualTo(4);
        assertThat(shop.shop.liveEdition()).isEqualTo(2);
    }

    @Test
    void what_is_withdrawn_before_its_day_does_not_go_live() {
        OpenShop shop = OpenShop.open();
        shop.publish("December", r -> moreRibbon(r, "3.2"), shop.editions.today().plusDays(3), true, "");
        shop.publisher.withdraw(shop.editions.toCome(shop.editions.today()).get(0).id(), "Ada");
        shop.clock.forward(Duration.ofDays(5));
        assertThat(shop.shop.liveEdition()).isEqualTo(1);
    }

    @Test
    void going_back_makes_an_earlier_edition_live_and_going_forth_again_too() {
        OpenShop shop = OpenShop.open();
        shop.publish("Ribbon", r -> moreRibbon(r, "3.2"));
        assertThat(shop.shop.rollBack(1, "Ben")).isEmpty();
        assertThat(rolls(shop.shop.designer())).isEqualTo(3);
        assertThat(shop.again("").shop.liveEdition()).isEqualTo(1);
        assertThat(shop.shop.rollBack(2, "Ben")).isEmpty();
        assertThat(rolls(shop.shop.designer())).isEqualTo(4);
        assertThat(shop.editions.all()).as("no edition is made by going back").hasSize(2);
    }

    @Test
    void the_history_says_who_changed_what_row_by_row() {
        OpenShop shop = OpenShop.open();
        shop.publish("Ribbon", r -> moreRibbon(r, "3.2").withNumber(HouseNumber.TAIL, "10 in"));
        shop.shop.rollBack(1, "Ben");
        List<HouseEvent> history = shop.editions.history(10);
        assertThat(history).extracting(HouseEvent::kind).startsWith(HouseEvent.Kind.ROLLED_BACK, HouseEvent.Kind.PUBLISHED, HouseEvent.Kind.KEPT);
        assertThat(history.get(0).author()).isEqualTo("Ben");
        assertThat(history.get(2).words().lines()).containsExactly("Rolls of body ribbon, By height, row 4, Rolls: 2.55 → 3.2", "Ribbon and bows, Tail of a run: 8 in → 10 in");
    }

    @Test
    void two_editions_never_have_one_name_and_a_name_is_needed() {
        OpenShop shop = OpenShop.open();
        assertThat(refused(shop.publish("winter 26", r -> r))).singleElement().asString().contains("already");
        assertThat(refused(shop.publish("  ", r -> r))).singleElement().asString().contains("name");
        assertThat(refused(shop.publish("Yesterday", r -> r, shop.editions.today().minusDays(1), true, ""))).singleElement().asString().contains("today or later");
    }

    @Test
    void an_edition_that_cannot_be_opened_any_more_is_passed_over_at_start() {
        OpenShop shop = OpenShop.open();
        shop.publish("Ribbon", r -> moreRibbon(r, "3.2"));
        shop.spoil(2, "hitPolicy", "hitPolice");
        assertThat(shop.again("").shop.liveEdition()).isEqualTo(1);
    }

    @Test
    void a_faulty_rules_folder_is_told_by_file_line_and_rule_and_what_is_live_stays_live(@TempDir Path folder) throws IOException {
        copy(Path.of("rules"), folder);
        OpenShop shop = OpenShop.open(folder.toString());
        Designer live = shop.shop.designer();
        Path file = folder.resolve("style/ribbon.drl");
        String sound = Files.readString(file);

        Files.writeString(file, sound.replace("new Demand.Narrower(Role.OVERLAY_RIBBON", "new Demand.Narrower(Role.OVERLAY_RIBBEN"));
        assertThat(shop.shop.reload("Ada")).singleElement().asString().contains("style/ribbon.drl").contains("S-22").containsPattern("line \\d+");
        assertThat(shop.shop.designer()).isSameAs(live);

        Files.writeString(file, sound.replace("S-22: The overlay is narrower", "S-22: The overlay runs narrower"));
        assertThat(shop.shop.reload("Ada")).isEmpty();
        assertThat(shop.shop.designer().rulebook().rules()).extracting(r -> r.sentence()).contains("The overlay runs narrower than the base on which it runs");
    }

    @Test
    void tables_that_engineers_change_in_the_folder_become_an_edition_which_goes_live_unless_staff_have_published_since(@TempDir Path folder) throws IOException {
        copy(Path.of("rules"), folder);
        OpenShop shop = OpenShop.open(folder.toString());
        Path file = folder.resolve("sizing/body-ribbon.dmn");
        shop.shop.designer();

        Files.writeString(file, Files.readString(file).replace(">2.55<", ">3.2<"));
        assertThat(shop.shop.reload("Ada")).isEmpty();
        assertThat(rolls(shop.shop.designer())).isEqualTo(4);
        assertThat(shop.shop.designer().rulebook().edition().id()).isEqualTo("winter-26-2");
        assertThat(shop.shop.reload("Ada")).isEmpty();
        assertThat(shop.editions.all()).hasSize(2);

        shop.publish("Staff’s own", r -> moreRibbon(r, "2.6"));
        Files.writeString(file, Files.readString(file).replace(">3.2<", ">4.1<"));
        assertThat(shop.shop.reload("Ada")).isEmpty();
        assertThat(rolls(shop.shop.designer())).as("staff’s edition").isEqualTo(3);
        assertThat(shop.editions.all()).hasSize(4);
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
    }

    @Test
    void a_draft_is_kept_with_each_change_and_comes_back_after_a_restart() {
        OpenShop shop = OpenShop.open();
        HouseRules wrong = moreRibbon(shop.live(), "many");
        shop.drafts.keep(1, wrong, "Ada", java.util.Optional.empty());
        assertThat(shop.again("").drafts.open()).hasValueSatisfying(d -> {
            assertThat(d.rules()).isEqualTo(wrong);
            assertThat(d.author()).isEqualTo("Ada");
        });
    }
}
