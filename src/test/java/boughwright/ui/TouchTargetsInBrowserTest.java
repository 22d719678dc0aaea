package boughwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskFixture;
import boughwright.consultation.Consultations;
import boughwright.needs.Adjustments;
import boughwright.proposal.Designer;
import com.vaadin.flow.router.RouteConfiguration;
import com.vaadin.flow.server.VaadinServletContext;
import com.vaadin.flow.server.startup.ApplicationRouteRegistry;
import jakarta.servlet.ServletContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * Everything that can be touched is at least 44 by 44 CSS pixels and can be hit at its centre, on every screen, lying and upright. The measure is that of
 * WCAG 2.2, success criterion 2.5.5 (enhanced); excepted are links within a sentence, as there and in 2.5.8 ("inline"), and pieces on a drawing to scale,
 * which the list beside it offers too ("equivalent").
 */
class TouchTargetsInBrowserTest extends StaffedKiosk {

    private static final String LOOK = """
            const small = [];
            const name = e => `${e.tagName.toLowerCase()}.${String(e.className).trim().replaceAll(' ', '.')} “${(e.getAttribute('aria-label') || e.textContent || e.placeholder || e.id || '').trim().slice(0, 40)}”`;
            const over = document.querySelector('dialog:modal');
            const seen = e => {
              if (over && !over.contains(e)) return false;
              const box = e.getBoundingClientRect();
              const style = getComputedStyle(e);
              return box.width > 1 && box.height > 1 && style.visibility !== 'hidden' && style.clipPath === 'none' && e.checkVisibility() && !e.disabled;
            };
            const within = e => {
              if (e.tagName !== 'A' || getComputedStyle(e).display !== 'inline') return false;
              return [...e.parentElement.childNodes].some(n => n.nodeType === 3 && n.textContent.trim() !== '');
            };
            const scrolled = [...document.querySelectorAll('main, .kit, .asks')].map(e => [e, e.scrollTop]);
            for (const e of document.querySelectorAll('button, a[href], input:not([type=hidden]), select, textarea, summary, [role=button], [tabindex="0"]')) {
              if (!seen(e) || within(e) || e.closest('.picture') && e.closest('svg')) continue;
              // A tick is touched with the words that belong to it.
              const target = /^(checkbox|radio)$/.test(e.type) && e.closest('label') || e;
              target.scrollIntoView({ block: 'center', inline: 'center', behavior: 'instant' });
              const box = target.getBoundingClientRect();
              if (box.width < 43.5 || box.height < 43.5) small.push(`${name(e)}: ${box.width.toFixed(1)} × ${box.height.toFixed(1)}`);
              const hit = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
              if (!hit || !(target.contains(hit) || hit.contains(target) && hit.tagName === 'LABEL')) {
                small.push(`${name(e)}: its centre is ${hit ? name(hit) : 'off the screen'}`);
              }
            }
            scrolled.forEach(([e, top]) => e.scrollTop = top);
            if (document.documentElement.scrollWidth > innerWidth + 1) small.push(`the page is ${document.documentElement.scrollWidth} wide`);
            return small.join('\\n');
            """;

    @Autowired
    private ServletContext servlets;
    @Autowired
    private Consultations consultations;

    private final List<String> found = new ArrayList<>();

    private void size(int width, int height) {
        browser.executeCdpCommand("Emulation.setDeviceMetricsOverride", Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    }

    private void canBeTouched(String screen) {
        for (int[] size : new int[][] {{800, 1280}, {1280, 800}}) {
            size(size[0], size[1]);
            String small = (String) browser.executeScript(LOOK);
            if (!small.isEmpty()) {
                found.add(screen + " at " + size[0] + " × " + size[1] + ":\n" + small);
            }
        }
    }

    private void next() {
        String before = browser.findElement(By.tagName("h1")).getText();
        click("//footer//button[contains(@class,'strong')]");
        patience.until(ExpectedConditions.not(ExpectedConditions.textToBe(By.tagName("h1"), before)));
    }

    private void pressed(String xpath) {
        click(xpath);
        patience.until(ExpectedConditions.attributeToBe(By.xpath(xpath), "aria-pressed", "true"));
    }

    @Test
    void everything_a_customer_can_touch_is_large_enough_and_can_be_hit() throws Exception {
        browser.get(address("/"));
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".inviting")));
        canBeTouched("the inviting page");
        click("//button[.='I have a code']");
        heading("Your code");
        canBeTouched("the code page");
        browser.get(address("/interview"));
        heading("How tall is your tree?");
        pressed("//button[contains(@class,'card')][.//span[text()='9 ft']]");
        click("//button[.='Why do we ask?']");
        for (Question question : Question.values()) {
            if (question == Question.OWNED) {
                browser.findElement(By.id("search")).sendKeys("copper ball", Keys.ENTER);
                click("//div[contains(@class,'found')]/button[1]");
                patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".owned-list .line")));
            }
            canBeTouched("question " + question);
            if (question != Question.OWNED) {
                next();
            }
        }
        click("//button[@data-finish]");
        canBeTouched("finishing");
        click("//dialog//button[.='Not yet']");
        click("//footer//button[contains(@class,'strong')]");
        patience.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(".way")));
        canBeTouched("the ways");
        click("//button[.='Take this one']");
        heading("A Woodland tree of 9 ft");
        click("(//div[contains(@class,'kit-list')]//button[starts-with(., 'Why')])[1]");
        click("(//div[contains(@class,'kit-list')]//button[.='Swap'])[1]");
        patience.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(".swaps .card")));
        click("(//button[.='Change this layer'])[1]");
        patience.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(".layer-tools")));
        canBeTouched("the kit");
        for (String side : new String[] {"Colours", "Steps", "Take care", "Change"}) {
            pressed("//div[contains(@class,'sides')]//button[.='" + side + "']");
            canBeTouched(side);
        }
        pressed("//div[contains(@class,'stage-box')]//button[.='Move things']");
        browser.executeScript("document.querySelector('.stage-box .picture').dispatchEvent(new CustomEvent('piece-picked', {detail: {id: 'cluster-3'}}))");
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".piece-card h2")));
        canBeTouched("moving things");
        click("//button[.='Grow it over years']");
        patience.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(".way")));
        canBeTouched("the years");
        openByCode(conflict());
        heading("No kit fits all of this at once");
        canBeTouched("the conflict");
        String code = kept("{\"tree\":{\"height\":\"7 ft 6 in\"}}");
        browser.get(address("/plan/" + code));
        heading("Your code");
        canBeTouched("a plan whose code was not typed");
        browser.get(address("/api/proposals/" + code + "/at-home"));
        patience.until(ExpectedConditions.elementToBeClickable(By.cssSelector("footer .strong")));
        canBeTouched("the start at home");
        click("//footer//button[contains(@class,'strong')]");
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".count"), "Step 1 of"));
        canBeTouched("a step at home");
        browser.get(address("/nowhere-at-all"));
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".lost h1")));
        canBeTouched("an address that leads nowhere");

        assertThat(String.join("\n\n", found)).isEmpty();
    }

    /** A consultation in which nothing fits. */
    private String conflict() {
        String brief = "{\"tree\": {\"height\": \"9 ft\"}, \"budget\": \"60.00\"}";
        return consultations.begin(brief, KioskFixture.designer().propose(brief, Adjustments.NONE, Designer.SEED)).code();
    }

    @Test
    void everything_staff_can_touch_is_large_enough_and_can_be_hit() {
        browser.get(address("/" + HouseRulesView.ROUTE));
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".sign-in h1")));
        canBeTouched("the door");
        signIn("/" + HouseRulesView.ROUTE);
        TreeSet<String> routes = new TreeSet<>();
        RouteConfiguration.forRegistry(ApplicationRouteRegistry.getInstance(new VaadinServletContext(servlets))).getAvailableRoutes()
                .forEach(route -> routes.add(route.getTemplate().replaceAll("/?:.*", "")));
        routes.removeIf(route -> route.startsWith("test/"));
        assertThat(routes).contains("", "interview", "plan", "house-rules", "shelf");
        for (String route : routes) {
            browser.get(address("/" + route));
            patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".screen h1")));
            canBeTouched("/" + route);
        }

        assertThat(String.join("\n\n", found)).isEmpty();
    }
}
