package boughwright.intake;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/**
 * Watches an XML text go by and stops it at what no spreadsheet holds: a document type, through which entities come, and any single piece,
 * be it a tag, a comment or a run of text, that a parser would have to hold whole and that is too long for that.
 */
final class XmlPieces extends FilterReader {

    /** The longest tag, comment or instruction, in characters. */
    private static final int LONGEST_MARK = 64 * 1024;

    private enum State {
        TEXT, OPEN, TAG, COMMENT, CDATA, INSTRUCTION
    }

    /** A refusal on its way through a parser that lets only its own kind of exception pass. */
    static final class Stopped extends IOException {

        private static final long serialVersionUID = 1;

        private final transient RefusedFile refused;

        Stopped(RefusedFile refused) {
            super(refused.getMessage());
            this.refused = refused;
        }

        RefusedFile refused() {
            return refused;
        }
    }

    private final StringBuilder opening = new StringBuilder();
    private State state = State.TEXT;
    private int length;
    private char quote;
    private char before;
    private char beforeThat;

    XmlPieces(Reader in) {
        super(in);
    }

    @Override
    public int read() throws IOException {
        int c = in.read();
        if (c >= 0) {
            pass((char) c);
        }
        return c;
    }

    @Override
    public int read(char[] into, int from, int count) throws IOException {
        int read = in.read(into, from, count);
        for (int i = from; i < from + read; i++) {
            pass(into[i]);
        }
        return read;
    }

    private void pass(char c) throws IOException {
        if (++length > (state == State.TEXT || state == State.CDATA ? Limits.LONGEST_TEXT : LONGEST_MARK)) {
            throw new Stopped(new RefusedFile(Refusal.TEXT_LENGTH, String.valueOf(Limits.LONGEST_TEXT)));
        }
        switch (state) {
            case TEXT -> {
                if (c == '<') {
                    opening.setLength(0);
                    begin(State.OPEN);
                }
            }
            case OPEN -> open(c);
            case TAG -> tag(c);
            case COMMENT -> endAt(c == '>' && before == '-' && beforeThat == '-' && length > 2);
            case CDATA -> endAt(c == '>' && before == ']' && beforeThat == ']');
            default -> endAt(c == '>' && before == '?');
        }
        beforeThat = before;
        before = c;
    }

    private void open(char c) throws IOException {
        opening.append(c);
        String begun = opening.toString();
        if (c == '?') {
            begin(State.INSTRUCTION);
        } else if (c != '!' && begun.length() == 1) {
            begin(State.TAG);
            tag(c);
        } else if (begun.equals("!--")) {
            begin(State.COMMENT);
        } else if (begun.equals("![CDATA[")) {
            begin(State.CDATA);
        } else if (!"!--".startsWith(begun) && !"![CDATA[".startsWith(begun)) {
            throw new Stopped(new RefusedFile(Refusal.XML_ENTITIES));
        }
    }

    private void tag(char c) {
        if (quote != 0) {
            quote = c == quote ? 0 : quote;
        } else if (c == '"' || c == '\'') {
            quote = c;
        } else if (c == '>') {
            begin(State.TEXT);
        }
    }

    private void endAt(boolean end) {
        if (end) {
            begin(State.TEXT);
        }
    }

    private void begin(State next) {
        state = next;
        length = 0;
    }

    @Override
    public boolean markSupported() {
        return false;
    }

    @Override
    public boolean ready() {
        return false;
    }
}
