package boughwright.ui;

import com.vaadin.flow.component.page.AppShellConfigurator;
import com.vaadin.flow.component.page.Viewport;
import com.vaadin.flow.server.AppShellSettings;
import java.util.List;

/** The page that all screens share. */
@Viewport("width=device-width, initial-scale=1")
public class Kiosk implements AppShellConfigurator {

    /** Names the page's icon and its style sheets, so that the first paint has our own face. */
    @Override
    public void configurePage(AppShellSettings settings) {
        settings.addFavIcon("icon", "lib/boughwright.svg", "any");
        for (String sheet : List.of("boughwright", "kiosk", "people", "counter")) {
            settings.addLink("stylesheet", "lib/" + sheet + ".css");
        }
        // Put on a tablet's home screen the kiosk fills the whole of it.
        settings.addLink("manifest", "lib/kiosk.webmanifest");
        settings.addMetaTag("theme-color", "#f7f2e6");
    }
}
