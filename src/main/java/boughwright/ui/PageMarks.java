package boughwright.ui;

import boughwright.guard.PageNonce;
import com.vaadin.flow.server.ServiceInitEvent;
import com.vaadin.flow.server.VaadinServiceInitListener;
import com.vaadin.flow.server.VaadinServletRequest;
import com.vaadin.flow.spring.annotation.SpringComponent;

/** Marks the scripts of the page that all screens share, so that the browser runs no others. */
@SpringComponent
class PageMarks implements VaadinServiceInitListener {

    @Override
    public void serviceInit(ServiceInitEvent event) {
        event.addIndexHtmlRequestListener(page -> {
            String nonce = PageNonce.of(((VaadinServletRequest) page.getVaadinRequest()).getHttpServletRequest());
            page.getDocument().select("script").attr("nonce", nonce);
        });
    }
}
