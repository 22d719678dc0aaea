package boughwright.ui;

import boughwright.text.Text;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** What a page must know for itself, so that it can speak and act when the kiosk cannot be reached: {@code lib/kiosk.js} reads it. */
final class PageWords {

    private static final ObjectMapper JSON = new ObjectMapper();

    private PageWords() {
    }

    /**
     * @param customer whether nobody of the shop is signed in, so that the page wipes itself when it is left alone
     * @param rest whether there is nothing on it or behind it to be wiped
     * @param code of the consultation that is open, as it is said
     */
    static String of(boolean customer, boolean rest, Optional<String> code) {
        ObjectNode page = JSON.createObjectNode();
        page.put("customer", customer).put("rest", rest).put("code", code.orElse("")).put("idle", Idle.here().seconds()).put("warning", Idle.here().warning());
        page.putObject("words").put("brand", Text.of("brand"))
                .put("idle", Text.of("kiosk.idle")).put("idleWords", Text.of("kiosk.idle.words", "{0}")).put("idleCode", Text.of("kiosk.idle.code", "{0}"))
                .put("stay", Text.of("kiosk.idle.stay")).put("clear", Text.of("kiosk.finish"))
                .put("finish", Text.of("kiosk.finish.title")).put("finishWords", Text.of("kiosk.finish.words"))
                .put("finishCode", Text.of("kiosk.finish.code", "{0}")).put("notYet", Text.of("kiosk.finish.not-yet"))
                .put("lost", Text.of("kiosk.lost")).put("lostWords", Text.of("kiosk.lost.words"))
                .put("afresh", Text.of("kiosk.afresh")).put("afreshWords", Text.of("kiosk.afresh.words"));
        return page.toString();
    }
}
