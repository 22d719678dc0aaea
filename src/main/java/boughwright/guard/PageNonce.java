package boughwright.guard;

import jakarta.servlet.http.HttpServletRequest;

/** The mark that a page's own scripts bear, new for each answer, so that the browser runs no others. */
public final class PageNonce {

    static final String ATTRIBUTE = PageNonce.class.getName();

    private PageNonce() {
    }

    /** The mark of the answer to this request. */
    public static String of(HttpServletRequest request) {
        return (String) request.getAttribute(ATTRIBUTE);
    }
}
