package boughwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.catalogue.Product;
import boughwright.consultation.Consultations;
import boughwright.intake.CatalogueFile;
import boughwright.intake.Format;
import boughwright.proposal.Outcome;
import boughwright.publishing.ShopDoor;
import boughwright.shelf.Shelf;
import boughwright.shelf.ShelfEvent;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.Select;
import org.springframework.beans.factory.annotation.Autowired;

class ShelfInBrowserTest extends StaffedKiosk {

    @TempDir
    private Path files;
    @Autowired
    private ShopDoor shop;
    @Autowired
    private Shelf shelf;
    @Autowired
    private Consultations consultations;

    /** Other tests of this kiosk sell what the demo shop sells. */
    @AfterEach
    void backToTheSeason() {
        while (shelf.undoable().isPresent()) {
            assertThat(shelf.undo(shelf.undoable().get().id(), "test")).isNotInstanceOf(Shelf.Outcome.Refused.class);
        }
    }

    private String cell(String sku, String column) {
        return shelf.cells(sku).get(column);
    }

    private Product first() {
        // The shelf is there once the shop is open.
        shop.designer();
        return shelf.onSale().get(0);
    }

    private WebElement field(String sku, String column) {
        return patience.until(ExpectedConditions.elementToBeClickable(By.cssSelector("input[aria-label='" + column + " of " + sku + "']")));
    }

    private void choose(String id, String words) {
        new Select(patience.until(ExpectedConditions.elementToBeClickable(By.id(id)))).selectByVisibleText(words);
    }

    private void notice(String words) {
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".notice"), words));
    }

    private void stockOnly() {
        click("//button[.='Stock only']");
        // The page is drawn anew.
        patience.until(ExpectedConditions.presenceOfElementLocated(By.xpath("//button[.='Stock only'][@aria-pressed='true']")));
    }

    private Path csv(List<Product> products) throws IOException {
        Path file = files.resolve("delivery.csv");
        try (OutputStream out = Files.newOutputStream(file)) {
            CatalogueFile.write(Format.CSV, products, out);
        }
        return file;
    }

    @Test
    void a_price_changed_where_it_stands_is_proposed_at_once_and_can_be_taken_back() throws Exception {
        signIn("/shelf");
        heading("Products");
        isAccessible("the products");
        Product product = first();
        field(product.sku(), "Price of a pack").sendKeys(Keys.chord(Keys.CONTROL, "a"), "$1,234.50", Keys.TAB);
        notice("Kept");
        assertThat(shop.designer().catalogue().product(product.sku()).orElseThrow().price().decimal()).isEqualTo("1234.50");

        click("//button[.='Take it back']");
        notice("Taken back");
        assertThat(shop.designer().catalogue().product(product.sku())).contains(product);
    }

    @Test
    void a_cell_that_cannot_be_is_marked_and_told_and_nothing_changes() throws Exception {
        signIn("/shelf");
        Product product = first();
        field(product.sku(), "Packs on hand").sendKeys(Keys.chord(Keys.CONTROL, "a"), "plenty", Keys.TAB);
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.xpath("//div[contains(@class,'row-complaint')][.!='']"), "whole number"));
        isAccessible("a cell with a fault");
        assertThat(cell(product.sku(), "stock")).isEqualTo(String.valueOf(product.stock()));
    }

    @Test
    void ribbons_are_found_by_the_eye_and_many_are_changed_at_once() throws Exception {
        signIn("/shelf");
        choose("shelf-role", "overlay ribbon");
        browser.executeScript("const c = document.getElementById('shelf-near'); c.value = '#5e2750'; c.dispatchEvent(new Event('change', {bubbles: true}));");
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".product-row:nth-child(2) .colours-cell"), "away"));
        String sku = browser.findElement(By.cssSelector(".product-row:nth-child(2) .names .soft")).getText().split(" ")[0];

        browser.findElement(By.cssSelector(".product-row:nth-child(2) .tick input")).click();
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".bulk-count"), "One chosen"));
        choose("bulk-deed", "the price, by a percentage");
        type("bulk-value", "-50 %");
        isAccessible("many chosen");
        String before = cell(sku, "price");
        click("//div[contains(@class,'bulk')]//button[.='Change one']");
        notice("Kept");
        assertThat(Double.parseDouble(cell(sku, "price"))).isCloseTo(Double.parseDouble(before) / 2, org.assertj.core.data.Offset.offset(0.006));
    }

    @Test
    void a_file_is_matched_checked_compared_and_brought_in_and_taken_back() throws Exception {
        first();
        List<Product> season = shelf.onSale();
        String text = Files.readString(csv(season.subList(0, 40))).replace("sku,gtin", "Item no,EAN").replaceFirst("(?m)^(" + season.get(0).sku() + ",)\\d{13}", "$1123");
        Path faulty = Files.writeString(files.resolve("faulty.csv"), text, StandardCharsets.UTF_8);
        signIn("/shelf/file");
        heading("Bring in a file");
        isAccessible("the door for files");
        browser.findElement(By.id("shelf-file")).sendKeys(faulty.toString());
        patience.until(ExpectedConditions.elementToBeClickable(By.id("match-sku")));
        assertThat(new Select(browser.findElement(By.id("match-sku"))).getFirstSelectedOption().getText()).isEqualTo("Item no");
        isAccessible("the columns");
        click("//button[.='Check the file']");
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".delivery"), "One thing to mend"));
        assertThat(browser.findElement(By.cssSelector(".delivery")).getText()).contains("Line 2").contains("EAN").contains("13 digits");
        assertThat(browser.findElements(By.cssSelector(".delivery a[download]"))).hasSize(1);
        isAccessible("a file with a fault");
        assertThat(shelf.onSale()).hasSize(season.size());

        click("//button[.='What the file does not name stays']");
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".delivery"), "0 leaving the range"));
        click("//button[.='What the file does not name leaves the range']");
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".delivery"), (season.size() - 40) + " leaving the range"));
        click("//button[.='Bring in the 39 good rows']");
        notice("Kept for " + (season.size() - 40) + " products");
        assertThat(shelf.onSale()).hasSize(40);

        click("//nav//button[.='What was done']");
        heading("What was done");
        isAccessible("what was done");
        assertThat(shelf.undoable().map(ShelfEvent::words)).contains("faulty.csv");
        click("//button[.='Take it back']");
        notice("Taken back");
        assertThat(shelf.onSale()).isEqualTo(season);
    }

    @Test
    void a_matching_of_columns_is_remembered_for_the_next_file() throws Exception {
        signIn("/shelf/file");
        stockOnly();
        Path file = Files.writeString(files.resolve("till.csv"), "Article;Bin;Counted\n" + first().sku() + ";A1;7\n");
        browser.findElement(By.id("shelf-file")).sendKeys(file.toString());
        patience.until(ExpectedConditions.elementToBeClickable(By.id("match-stock")));
        choose("match-sku", "Article");
        choose("match-stock", "Counted");
        click("//button[.='Check the file']");
        click("//button[.='Bring in one change']");
        notice("Kept");
        assertThat(cell(first().sku(), "stock")).isEqualTo("7");

        browser.get(address("/shelf/file"));
        stockOnly();
        browser.findElement(By.id("shelf-file")).sendKeys(file.toString());
        patience.until(ExpectedConditions.elementToBeClickable(By.id("match-stock")));
        assertThat(new Select(browser.findElement(By.id("match-stock"))).getFirstSelectedOption().getText()).isEqualTo("Counted");
        assertThat(browser.findElement(By.cssSelector(".file-page")).getText()).contains("was matched before");
    }

    @Test
    void a_product_takes_its_colours_from_a_photo_and_keeps_the_photo_when_asked() throws Exception {
        BufferedImage picture = new BufferedImage(600, 600, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = picture.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, 600, 600);
        pen.setColor(new Color(0x7d2b49));
        pen.fillOval(100, 100, 400, 400);
        pen.dispose();
        Path photo = files.resolve("ball.png");
        ImageIO.write(picture, "png", photo.toFile());
        Product product = first();

        signIn("/shelf/of?sku=" + product.sku());
        heading(product.name());
        isAccessible("a product");
        browser.findElement(By.id("product-photo")).sendKeys(photo.toString());
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".photo-colour")));
        isAccessible("colours of a photo");
        click("//button[.='Keep the photo too']");
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".product-photo img")));
        click("//button[.='Take these colours']");
        notice("Kept");
        assertThat(boughwright.colour.Srgb.read(cell(product.sku(), "colour")).map(boughwright.colour.Lab::of).orElseThrow()
                .difference(boughwright.colour.Lab.of(new boughwright.colour.Srgb(0x7d, 0x2b, 0x49)))).isLessThan(2);
        click("//button[.='Take the photo away']");
        patience.until(ExpectedConditions.numberOfElementsToBe(By.cssSelector(".product-photo img"), 0));
    }

    @Test
    void a_product_says_where_it_has_been_and_why_it_is_not_proposed() throws Exception {
        String code = kept("{\"tree\": {\"height\": \"7 ft 6 in\"}}");
        String proposed = consultations.reopen(code).map(r -> ((Outcome.Made) r.outcome()).proposal().kit().lines().get(0).sku()).orElseThrow();
        Product none = shelf.onSale().stream().filter(p -> p.stock() == 0).findFirst().orElseThrow();

        signIn("/shelf/of?sku=" + none.sku());
        click("//button[.='Try it']");
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".standing-group")));
        assertThat(browser.findElement(By.cssSelector(".product-told")).getText()).contains("Proposed for 0 of").contains("there is too little of it");
        isAccessible("why it is not proposed");

        browser.get(address("/shelf/of?sku=" + proposed));
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".codes"), code.replace('-', ' ').toUpperCase(java.util.Locale.ROOT)));
    }

    @Test
    void a_new_product_is_checked_as_a_whole_before_it_stands_on_the_shelf() throws Exception {
        Product like = first();
        signIn("/shelf/new?sku=" + like.sku());
        heading("A new product");
        click("//button[.='Put it on the shelf']");
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".field.wrong .cell-fault"), "empty"));
        isAccessible("a new product");
        type("product-sku", "TEST-1");
        type("product-gtin", "6291041500213");
        type("product-stock", "12");
        browser.findElement(By.id("product-stock")).sendKeys(Keys.TAB);
        click("//button[.='Put it on the shelf']");
        heading(like.name());
        assertThat(shelf.catalogue().product("TEST-1")).hasValueSatisfying(p -> assertThat(p.stock()).isEqualTo(12));
    }

    @Test
    void the_till_s_page_shows_a_key_once() throws Exception {
        signIn("/shelf/till");
        heading("The till");
        click("//button[.='Make a key']");
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".till-page code")));
        isAccessible("the till");
        browser.navigate().refresh();
        heading("The till");
        assertThat(browser.findElements(By.cssSelector(".till-page code"))).isEmpty();
        click("//button[.='Take the key away']");
        patience.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".till-page"), "There is no key yet"));
    }
}
