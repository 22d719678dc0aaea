package boughwright.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.ExpectedConditions;

/** The interview to the plan without a finger: by the keyboard alone, and by the names and roles that a screen reader reads. */
class WalksInBrowserTest extends BrowsedKiosk {

    /** More stops than any page has. */
    private static final int MOST_STOPS = 140;
    private static final Set<String> TOUCHED = Set.of("button", "link", "textbox", "searchbox", "checkbox", "radio", "combobox", "slider", "spinbutton", "ColorWell");

    private void press(CharSequence... keys) {
        new Actions(browser).sendKeys(keys).perform();
    }

    private String at() {
        return (String) browser.executeScript("""
                const at = document.activeElement;
                return at === document.body ? '' : (at.getAttribute('aria-label') || at.labels?.[0]?.textContent || at.textContent).trim();""");
    }

    /** Goes on by Tab until it stands on what begins with these words; where it stands can be seen all the way. */
    private void tabTo(String words) {
        for (int i = 0; i < MOST_STOPS; i++) {
            press(Keys.TAB);
            if (at().isEmpty()) {
                // Round by the browser's own bar.
                continue;
            }
            Object seen = browser.executeScript("""
                    const style = getComputedStyle(document.activeElement);
                    const box = document.activeElement.getBoundingClientRect();
                    return document.activeElement.matches(':focus-visible') && style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2
                        && box.bottom > 0 && box.top < innerHeight;""");
            assertThat(seen).as("the focus on “%s” can be seen", at()).isEqualTo(true);
            if (at().startsWith(words)) {
                return;
            }
        }
        fail("no way by Tab to “" + words + "”");
    }

    private void chosen(String words) {
        patience.until(b -> Boolean.TRUE.equals(browser.executeScript(
                "return [...document.querySelectorAll('[aria-pressed=\"true\"]')].some(e => e.textContent.trim().startsWith(arguments[0]))", words)));
    }

    private void staysOn(String words) {
        patience.until(b -> at().startsWith(words));
    }

    @Test
    void the_keyboard_alone_leads_from_the_inviting_page_to_the_plan_and_its_focus_is_always_seen() {
        browser.get(address("/"));
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".inviting")));
        tabTo("Begin");
        press(Keys.ENTER);
        heading("How tall is your tree?");
        tabTo("9 ft");
        press(Keys.SPACE);
        chosen("9 ft");
        staysOn("9 ft");
        tabTo("Widest diameter");
        press("62 in", Keys.TAB);
        for (String[] page : new String[][] {{"Where will it be seen from?", "Against a wall"}, {"How high is the ceiling?", "10 ft"}, {"Who lives with the tree?", "Pets"},
            {"Which of these feels like home?", "Woodland"}, {"Which colours?", "Copper & cream"}, {"How richly shall it be dressed?", "Generous"}, {"What may it cost?", "No limit"}}) {
            tabTo("Next");
            press(Keys.ENTER);
            heading(page[0]);
            // The new question is read out, and Tab goes on from it.
            staysOn(page[0]);
            tabTo(page[1]);
            press(Keys.ENTER);
            chosen(page[1]);
        }
        tabTo("Finish and clear");
        press(Keys.ENTER);
        patience.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector("dialog.kiosk-finish")));
        press(Keys.ESCAPE);
        patience.until(ExpectedConditions.numberOfElementsToBe(By.cssSelector("dialog"), 0));
        staysOn("Finish and clear");
        tabTo("Next");
        press(Keys.ENTER);
        heading("Is anything here already yours?");
        tabTo("Look for a product");
        press("copper ball", Keys.ENTER);
        patience.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(".found .card")));
        tabTo("Show my tree");
        press(Keys.ENTER);
        patience.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(".way")));
        tabTo("Take this one");
        press(Keys.SPACE);
        heading("A Woodland tree of 9 ft");
        tabTo("Steps");
        press(Keys.SPACE);
        chosen("Steps");
        tabTo("Print the plan");
    }

    private record Heard(String role, String name, int level, int node) {
    }

    /** What a screen reader is given of the page. */
    @SuppressWarnings("unchecked")
    private List<Heard> heard() {
        List<Heard> heard = new ArrayList<>();
        for (Map<String, Object> node : (List<Map<String, Object>>) browser.executeCdpCommand("Accessibility.getFullAXTree", Map.of()).get("nodes")) {
            if (Boolean.TRUE.equals(node.get("ignored"))) {
                continue;
            }
            int level = 0;
            for (Map<String, Object> property : (List<Map<String, Object>>) node.getOrDefault("properties", List.of())) {
                if ("level".equals(property.get("name"))) {
                    level = ((Number) ((Map<String, Object>) property.get("value")).get("value")).intValue();
                }
            }
            heard.add(new Heard(value(node, "role"), value(node, "name"), level, ((Number) node.getOrDefault("backendDOMNodeId", 0)).intValue()));
        }
        return heard;
    }

    @SuppressWarnings("unchecked")
    private static String value(Map<String, Object> node, String property) {
        Map<String, Object> value = (Map<String, Object>) node.get(property);
        return value == null ? "" : String.valueOf(value.getOrDefault("value", ""));
    }

    /** Every control has a name, and headings go down by one level at a time from a single first one. */
    private void reads(String screen) {
        List<Heard> heard = heard();
        assertThat(heard.stream().filter(h -> TOUCHED.contains(h.role()) && h.name().isBlank()).toList()).as("%s: controls without a name", screen).isEmpty();
        List<Integer> levels = heard.stream().filter(h -> h.role().equals("heading")).map(Heard::level).toList();
        assertThat(levels.stream().filter(l -> l == 1).count()).as("%s: first headings of %s", screen, levels).isEqualTo(1);
        for (int i = 1; i < levels.size(); i++) {
            assertThat(levels.get(i)).as("%s: heading %d of %s", screen, i, levels).isLessThanOrEqualTo(levels.get(i - 1) + 1);
        }
        assertThat(heard.stream().filter(h -> h.role().equals("main"))).as("%s: one main part", screen).hasSize(1);
    }

    /** Does what a screen reader does when its user says: this button. */
    private void use(String role, String name, String how) {
        patience.until(b -> heard().stream().filter(h -> h.role().equals(role) && h.name().startsWith(name)).anyMatch(found -> does(found, how)));
    }

    /** The tree that a screen reader is given is a little behind the page: what has been drawn anew since is looked for again. */
    @SuppressWarnings("unchecked")
    private boolean does(Heard found, String how) {
        Map<String, Object> object;
        try {
            object = (Map<String, Object>) browser.executeCdpCommand("DOM.resolveNode", Map.of("backendNodeId", found.node())).get("object");
        } catch (WebDriverException goneMeanwhile) {
            return false;
        }
        Map<String, Object> result = (Map<String, Object>) browser.executeCdpCommand("Runtime.callFunctionOn", Map.of("objectId", object.get("objectId"),
                "returnByValue", true, "functionDeclaration", "function() { if (!this.isConnected) return false; " + how + " return true; }")).get("result");
        return Boolean.TRUE.equals(result.get("value"));
    }

    private void button(String name) {
        use("button", name, "this.click();");
    }

    @Test
    void a_screen_reader_finds_every_control_by_role_and_name_and_is_told_of_changes() {
        browser.executeCdpCommand("Accessibility.enable", Map.of());
        browser.get(address("/"));
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".inviting")));
        reads("the inviting page");
        button("I have a code");
        heading("Your code");
        reads("the code page");
        use("textbox", "Two words", "this.focus(); this.value = 'oak 9 elm'; this.dispatchEvent(new Event('input', {bubbles: true}));");
        button("Open");
        patience.until(b -> heard().stream().anyMatch(h -> h.role().equals("alert")) && browser.findElement(By.cssSelector("[role=alert]")).getText().contains("No proposal"));
        browser.get(address("/interview"));
        heading("How tall is your tree?");
        button("Next");
        patience.until(b -> browser.findElement(By.cssSelector(".fault[role=alert]")).getText().contains("from 3 ft to 20 ft"));
        button("9 ft");
        chosen("9 ft");
        for (Question question : Question.values()) {
            heading(boughwright.text.Text.of(question.titleKey()));
            reads("question " + question);
            button(question == Question.OWNED ? "Show my tree" : "Next");
        }
        patience.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(".way")));
        reads("the ways");
        button("Take this one");
        heading("A Woodland tree of 9 ft");
        for (String side : new String[] {"Kit", "Colours", "Steps", "Take care", "Change"}) {
            button(side);
            chosen(side);
            reads(side);
        }
        button("Restrained");
        patience.until(b -> !browser.findElements(By.cssSelector(".changed[role=status] li")).isEmpty());
        button("Grow it over years");
        patience.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(".way")));
        reads("the years");
    }
}
