package boughwright.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import java.util.Arrays;
import java.util.concurrent.atomic.AtomicReference;

/** Three places for files and what has arrived there; for the test in the browser alone. */
@AnonymousAllowed
@Route("test/file-drop")
@PageTitle("Files")
class FileDropPage extends Screen {

    static final int MOST = 3_000_000;

    FileDropPage() {
        super("files");
        Main main = new Main(new H1("Files"), place("plain", false), place("photo", true), slow());
        add(main);
    }

    private Div place(String id, boolean photo) {
        AtomicReference<String> found = new AtomicReference<>("");
        Paragraph told = new Paragraph();
        told.setId(id + "-told");
        FileDrop drop = new FileDrop(id, "Your file for " + id, "Text or pictures.", ".txt,image/*", MOST, (name, type, in, length) -> {
            byte[] bytes = in.readAllBytes();
            found.set(name + "|" + type + "|" + length + "|" + bytes.length + "|" + Arrays.hashCode(bytes) + "|" + size(bytes));
        }).whenDone(() -> told.setText(found.get()));
        return new Div(photo ? drop.withCamera().shrinking() : drop, told);
    }

    private static String size(byte[] bytes) {
        try {
            var picture = javax.imageio.ImageIO.read(new java.io.ByteArrayInputStream(bytes));
            return picture == null ? "" : picture.getWidth() + "x" + picture.getHeight();
        } catch (java.io.IOException e) {
            return "";
        }
    }

    /** Takes half a second for each kilobyte, so that there is time to stop it. */
    private Div slow() {
        Paragraph told = new Paragraph();
        told.setId("slow-told");
        return new Div(new FileDrop("slow", "Your file for slow", "Anything.", ".txt", MOST, (name, type, in, length) -> {
            byte[] some = new byte[1000];
            while (in.read(some) >= 0) {
                try {
                    Thread.sleep(500);
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                }
            }
        }).whenDone(() -> told.setText("all of it")), told);
    }
}
