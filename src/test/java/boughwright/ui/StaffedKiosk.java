package boughwright.ui;

import boughwright.people.FirstWord;
import boughwright.people.People;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.springframework.beans.factory.annotation.Autowired;

/** A browsed kiosk in which staff sign in; all tests share one manager, as they share one kiosk. */
abstract class StaffedKiosk extends BrowsedKiosk {

    static final String MANAGER = "Ada";
    static final String PASSWORD = "seven swans a-swimming";

    @Autowired
    People people;

    final void type(String id, String text) {
        WebElement field = patience.until(ExpectedConditions.elementToBeClickable(By.id(id)));
        field.clear();
        field.sendKeys(text);
    }

    /**
     * Signs the manager in.
     *
     * @param page its address, with a slash before it
     */
    final void signIn(String page) {
        browser.get(address(page));
        patience.until(ExpectedConditions.elementToBeClickable(By.id("staff-name")));
        if (!people.begun()) {
            type("staff-word", FirstWord.of(people));
            type("staff-again", PASSWORD);
        }
        type("staff-name", MANAGER);
        type("staff-password", PASSWORD);
        browser.findElement(By.id("staff-password")).sendKeys(Keys.ENTER);
        patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".house .who")));
    }
}
