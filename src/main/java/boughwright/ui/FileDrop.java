package boughwright.ui;

import boughwright.text.Text;
import com.vaadin.flow.component.ClientCallable;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.NativeLabel;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.dom.Element;
import com.vaadin.flow.server.HttpStatusCode;
import com.vaadin.flow.server.VaadinRequest;
import com.vaadin.flow.server.VaadinResponse;
import com.vaadin.flow.server.VaadinSession;
import com.vaadin.flow.server.streams.ElementRequestHandler;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * A labelled place on which one file at a time is dropped or chosen, from the keyboard too. The file goes straight to the receiver while
 * it arrives: nothing of it is put on disk. While it is sent a bar shows how far it is, and it can be stopped. Its script is
 * {@code lib/file-drop.js}.
 *
 * <p>The address that takes the file belongs to this component alone and is gone with it. A file larger than the limit is refused before
 * it is sent, and again while it arrives.
 */
final class FileDrop extends Div {

    /** Takes a file in. */
    @FunctionalInterface
    interface Receiver {

        /**
         * Reads the file, on the thread by which it arrives and without the screen's lock; must not touch the screen.
         *
         * @param fileName as the sender calls it, without folders, at most 200 characters; not to be trusted
         * @param contentType as the sender calls it; empty when it does not know; not to be trusted
         * @param in the file; ends in an exception when the sender stops, or sends more than the limit
         * @param length bytes that the sender promises
         */
        void received(String fileName, String contentType, InputStream in, long length) throws IOException;
    }

    private static final long MEGABYTE = 1_000_000;
    private static final int LONGEST_NAME = 200;
    /** Where the script puts the name of the file. */
    private static final String NAME_THERE = "{name}";
    /** Of the request, as {@code lib/file-drop.js} sets them. */
    private static final String NAME = "X-File-Name";
    private static final String TYPE = "X-File-Type";

    private final long most;
    private final Receiver receiver;
    private final Input input = new Input();
    private final Paragraph hint = new Paragraph();
    private Runnable done = () -> {
    };
    private volatile Arrival arrival = new Arrival();

    /**
     * @param id of the file input, unique on the page
     * @param hint what may be dropped, below the label; the limit is added
     * @param accept kinds of file as in HTML's {@code accept}: endings with a dot, or media types
     * @param mostBytes largest file that is taken
     */
    FileDrop(String id, String label, String hint, String accept, long mostBytes, Receiver receiver) {
        this.most = mostBytes;
        this.receiver = receiver;
        addClassName("file-drop");
        input.setType("file");
        input.setId(id);
        input.getElement().setAttribute("accept", accept).setAttribute("aria-describedby", id + "-hint");
        NativeLabel name = new NativeLabel(label);
        name.setFor(input);
        this.hint.setText(Text.of("file.hint", hint, size(mostBytes)));
        this.hint.setId(id + "-hint");
        this.hint.addClassName("soft");
        NativeButton cancel = new NativeButton(Text.of("file.stop"));
        cancel.addClassNames("button", "quiet", "file-drop-cancel");
        Element bar = new Element("progress");
        bar.setAttribute("max", "1").setAttribute("aria-label", Text.of("file.bar"));
        Div going = new Div(cancel);
        going.getElement().insertChild(0, bar);
        going.addClassName("file-drop-going");
        // Shown, hidden and filled by the script alone.
        going.getElement().setAttribute("hidden", true);
        Paragraph said = new Paragraph();
        said.addClassName("file-drop-said");
        said.getElement().setAttribute("role", "status");
        add(name, this.hint, input, going, said);
        Element here = getElement();
        here.setAttribute("data-most", String.valueOf(mostBytes));
        here.setAttribute("data-sending", Text.of("file.sending", NAME_THERE));
        here.setAttribute("data-reading", Text.of("file.reading", NAME_THERE));
        here.setAttribute("data-arrived", Text.of("file.arrived", NAME_THERE));
        here.setAttribute("data-stopped", Text.of("file.stopped", NAME_THERE));
        here.setAttribute("data-broken", Text.of("file.broken"));
        here.setAttribute("data-other-kind", Text.of("file.other-kind", NAME_THERE));
        here.setAttribute("data-several", Text.of("file.several"));
        here.setAttribute("data-too-large", tooLarge());
        here.setAttribute("data-to", (ElementRequestHandler) this::arrive);
    }

    /** @param done called on the screen each time a file has been received whole */
    FileDrop whenDone(Runnable done) {
        this.done = done;
        return this;
    }

    /** Where a finger points, a button beside it opens the camera that looks into the room. */
    FileDrop withCamera() {
        Input camera = new Input();
        camera.setType("file");
        camera.setId(input.getId().orElseThrow() + "-camera");
        camera.addClassName("unseen");
        camera.getElement().setAttribute("accept", "image/*").setAttribute("capture", "environment");
        NativeLabel label = new NativeLabel(Text.of("file.camera"));
        label.setFor(camera);
        label.addClassNames("button", "quiet");
        Div button = new Div(camera, label);
        button.addClassName("file-drop-camera");
        addComponentAtIndex(indexOf(input), button);
        return this;
    }

    /**
     * The browser makes pictures smaller before it sends them: longest side 1600 pixels, upright, without what the camera wrote beside
     * the picture. Kinds that the browser can read and others cannot become JPEG or PNG. What it cannot read goes as it is.
     */
    FileDrop shrinking() {
        getElement().setAttribute("data-shrink", "1600");
        return this;
    }

    private String tooLarge() {
        return Text.of("file.too-large", size(most));
    }

    /** Bytes in words; whole megabytes as makers of cameras count them. */
    private static String size(long bytes) {
        return bytes >= MEGABYTE ? Text.of("file.megabytes", String.format(Locale.ENGLISH, "%,d", bytes / MEGABYTE))
                : Text.of("file.kilobytes", String.format(Locale.ENGLISH, "%,d", Math.max(1, bytes / 1000)));
    }

    private static String or(String header) {
        return header == null ? "" : header;
    }

    /** The name that was sent percent-encoded, without folders and without characters that steer a terminal or a line. */
    private static String name(String sent) {
        String name;
        try {
            name = URLDecoder.decode(or(sent).replace("+", "%2B"), StandardCharsets.UTF_8);
        } catch (IllegalArgumentException odd) {
            name = "";
        }
        String bare = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1).replaceAll("\\p{C}", "").strip();
        return bare.length() > LONGEST_NAME ? bare.substring(bare.length() - LONGEST_NAME) : bare;
    }

    /** The script asks when the sending has ended, and so fetches what has changed on the screen. */
    @ClientCallable
    private String ended() {
        return arrival.refusal;
    }

    /** Somebody stopped it, even after the last byte was sent. */
    @ClientCallable
    private void stopped() {
        arrival.stopped = true;
    }

    /** What becomes of one file. */
    private static final class Arrival {

        private volatile boolean stopped;
        private volatile String refusal = "";
    }

    /** Takes a file in at the address of this component: the bare bytes, its name and type beside them. */
    private void arrive(VaadinRequest request, VaadinResponse response, VaadinSession session, Element owner) {
        Arrival mine = new Arrival();
        arrival = mine;
        // Told unless the file is received whole, also when the receiver fails.
        mine.refusal = Text.of("file.broken");
        long length = request.getContentLengthLong();
        try {
            if (length > most) {
                throw new TooLarge();
            }
            receiver.received(name(request.getHeader(NAME)), or(request.getHeader(TYPE)), new Limited(request.getInputStream(), most, mine), length);
            mine.refusal = "";
            session.access(() -> getUI().filter(ui -> !mine.stopped).ifPresent(ui -> ui.access(Text.carried(done)::run)));
        } catch (TooLarge large) {
            mine.refusal = tooLarge();
            response.setStatus(HttpStatusCode.REQUEST_ENTITY_TOO_LARGE.getCode());
        } catch (IOException brokenOff) {
            response.setStatus(HttpStatusCode.BAD_REQUEST.getCode());
        }
    }

    /** More arrives than is taken. */
    private static final class TooLarge extends IOException {
    }

    /** Breaks off behind the last byte that is taken, and when somebody has stopped it. */
    private static final class Limited extends FilterInputStream {

        private final Arrival arrival;
        private long left;

        Limited(InputStream in, long most, Arrival arrival) {
            super(in);
            this.left = most;
            this.arrival = arrival;
        }

        @Override
        public int read() throws IOException {
            int one = super.read();
            count(one < 0 ? 0 : 1);
            return one;
        }

        @Override
        public int read(byte[] into, int from, int length) throws IOException {
            int some = super.read(into, from, length);
            count(Math.max(0, some));
            return some;
        }

        @Override
        public long skip(long some) throws IOException {
            long skipped = super.skip(some);
            count(skipped);
            return skipped;
        }

        @Override
        public boolean markSupported() {
            return false;
        }

        private void count(long some) throws IOException {
            left -= some;
            if (left < 0) {
                throw new TooLarge();
            }
            if (arrival.stopped) {
                throw new InterruptedIOException();
            }
        }
    }
}
