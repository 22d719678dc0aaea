package boughwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.publishing.Drafts;
import boughwright.publishing.Editions;
import boughwright.publishing.ShopDoor;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.springframework.beans.factory.annotation.Autowired;

class HouseRulesInBrowserTest extends StaffedKiosk {

    private static final String CELL = "(//div[@role='table'])[1]//div[contains(@class,'grid-row')][%d]//input[contains(@aria-label, '%s')]";

    @Autowired
    private ShopDoor shop;
    @Autowired
    private Editions editions;
    @Autowired
    private Drafts drafts;

    /** Other tests of this kiosk begin with the first edition. */
    @AfterEach
    void backToTheFirstEdition() {
        drafts.mark().ifPresent(drafts::discard);
        if (shop.liveEdition() != 1) {
            shop.rollBack(1, "test");
        }
    }

    private void cell(int row, String column, String text) {
        WebElement field = patience.until(ExpectedConditions.elementToBeClickable(By.xpath(CELL.formatted(row + 1, column))));
        field.sendKeys(Keys.chord(Keys.CONTROL, "a"), text, Keys.TAB);
    }

    @Test
    void staff_change_a_number_see_what_is_wrong_mend_it_publish_and_go_back() throws Exception {
        browser.get(address("/house-rules/body-ribbon"));
        patience.until(ExpectedConditions.elementToBeClickable(By.id("staff-name")));
        isAccessible("the sign-in");
        signIn("/house-rules/body-ribbon");
        heading("Rolls of body ribbon");
        isAccessible("a page of tables");

        cell(5, "up to", "11");
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".complaint"), "Rows 5 and 6 leave a gap"));
        assertThat(browser.findElement(By.cssSelector(".to-mend")).getText()).isEqualTo("One thing to mend before this can go live");
        assertThat(browser.findElements(By.cssSelector(".height.wrong"))).hasSize(1);
        isAccessible("a page with a fault");
        click("//footer//button[.='Undo']");
        patience.until(ExpectedConditions.numberOfElementsToBe(By.cssSelector(".complaint"), 0));

        cell(4, "Rolls", "3.2");
        patience.until(b -> drafts.open().isPresent() && drafts.open().get().rules().sheet("body-ribbon").orElseThrow().grid("Base").orElseThrow().rows().get(3)
                .results().get(0).equals("3.2"));
        click("//footer//button[.='Publish']");
        heading("Publish the draft");
        isAccessible("publishing");
        type("publish-title", "With more ribbon");
        browser.findElement(By.id("publish-acknowledged")).click();
        click("//div[contains(@class,'publish-page')]//button[.='Publish it']");
        heading("Editions");
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".live.edition"), "With more ribbon"));
        isAccessible("the editions");
        assertThat(shop.designer().rulebook().edition().title()).isEqualTo("With more ribbon");

        click("//div[contains(@class,'edition')][.//h2[.='1 · Winter 26']]//button[.='Go back to this']");
        click("//button[.='Yes, make it live now']");
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".live.edition"), "Winter 26"));
        patience.until(b -> shop.liveEdition() == 1);
    }

    @Test
    void every_page_keeps_to_the_rules_of_accessibility() throws Exception {
        signIn("/house-rules/filler-balls");
        for (String page : List.of("Ribbon and bows", "Looks", "Palettes", "Colour shares", "Design score", "Cautions", "Rehearse", "Reference briefs")) {
            click("//nav//button[starts-with(., '" + page + "')]");
            heading(page);
            isAccessible(page);
        }
    }

    @Test
    void a_palette_is_read_anew_as_its_colours_are_changed() throws Exception {
        signIn("/house-rules/palettes");
        heading("Palettes");
        String words = "(//div[contains(@class,'palette-words')])[4]";
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.xpath(words), "Main (red) and ground (green) are hard to tell apart"));
        String ring = browser.findElement(By.cssSelector("#palette-ring-3-title")).findElement(By.xpath("..")).getAttribute("outerHTML");

        colour("palette-3-ground", "#2a2a3a");
        patience.until(b -> !browser.findElement(By.xpath(words)).getText().contains("hard to tell apart"));
        colour("palette-3-spark", "#b02c30");
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.xpath(words), "Main (red) and spark (red) will look like a mistake"));
        colour("palette-3-spark", "#a4212e");
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.xpath(words), "Main (red) and spark (red) pass for one"));

        assertThat(browser.findElement(By.cssSelector("#palette-ring-3-title")).findElement(By.xpath("..")).getAttribute("outerHTML")).isNotEqualTo(ring);
        isAccessible("a palette that was changed");
    }

    /** As the browser's own colour chooser would set it. */
    private void colour(String id, String hex) {
        browser.executeScript("const field = document.getElementById(arguments[0]); field.value = arguments[1]; field.dispatchEvent(new Event('change', {bubbles: true}));", id, hex);
    }

    @Test
    void a_floor_of_safety_is_not_undercut_and_the_page_says_why() {
        signIn("/house-rules/cautions");
        type("number-heat-distance", "2 ft");
        browser.findElement(By.id("number-heat-distance")).sendKeys(Keys.TAB);
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".complaint"), "never less. Three feet from heat is what fire-safety advice (NFPA) asks for"));
    }

    @Test
    void a_rehearsal_says_what_would_change_and_shows_the_largest_changes_side_by_side() throws Exception {
        // So large that its change is among the ten largest, whatever other tests have kept.
        String code = kept("{\"tree\": {\"height\": \"9 ft\", \"fullness\": \"full\", \"seenFrom\": \"round\"}, \"abundance\": \"lavish\"}")
                .replace('-', ' ').toUpperCase(java.util.Locale.ROOT);
        signIn("/house-rules/body-ribbon");
        heading("Rolls of body ribbon");
        cell(4, "Rolls", "3.2");
        patience.until(b -> drafts.open().isPresent());
        click("//footer//button[.='Rehearse']");
        click("//button[.='Newest 50']");
        click("//button[.='Begin']");
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".rehearsed .picture svg")));
        assertThat(browser.findElement(By.cssSelector(".facts")).getText()).contains("Kits that change");
        assertThat(browser.findElements(By.xpath("//div[contains(@class,'rehearsed')]/h2")).stream().map(WebElement::getText)).contains(code);
        isAccessible("the rehearsal");
    }

    @Test
    void staff_go_from_a_number_of_a_plan_to_the_row_that_says_so() throws Exception {
        String code = kept("{\"tree\": {\"height\": \"9 ft\"}}");
        signIn("/house-rules/body-ribbon");
        browser.get(address("/plan/" + code));
        click("(//div[contains(@class,'kit-list')]//button[starts-with(., 'Why')])[1]");
        click("//a[.='Open this row in the house rules']");
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".grid-row.pointed")));
        assertThat(browser.findElement(By.tagName("h1")).getText()).isEqualTo("Light bulbs");
    }
}
