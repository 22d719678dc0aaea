package boughwright.ui;

import com.vaadin.flow.component.page.AppShellConfigurator;
import com.vaadin.flow.component.page.Viewport;
import com.vaadin.flow.server.AppShellSettings;

/** The page that all screens share. */
@Viewport("width=device-width, initial-scale=1")
public class Kiosk implements AppShellConfigurator {

    /** Names the page's icon and its style sheet, so that the first paint has our own face. */
    @Override
    public void configurePage(AppShellSettings settings) {
        settings.addFavIcon("icon", "lib/boughwright.svg", "any");
        settings.addLink("stylesheet", "lib/boughwright.css");
    }
}
