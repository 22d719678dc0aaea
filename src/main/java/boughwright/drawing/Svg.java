package boughwright.drawing;

/** Writes SVG text: elements, escaped texts and short numbers with at most one decimal, always with a point. */
final class Svg {

    private final StringBuilder out;

    Svg(int capacity) {
        out = new StringBuilder(capacity);
    }

    Svg raw(String text) {
        out.append(text);
        return this;
    }

    Svg raw(CharSequence text) {
        out.append(text);
        return this;
    }

    Svg text(String text) {
        escape(out, text);
        return this;
    }

    /** {@code name="value"} preceded by a space; the value is escaped. */
    Svg attr(String name, String value) {
        out.append(' ').append(name).append("=\"");
        escape(out, value);
        out.append('"');
        return this;
    }

    Svg attr(String name, double value) {
        out.append(' ').append(name).append("=\"");
        tenth(out, value);
        out.append('"');
        return this;
    }

    Svg num(double value) {
        tenth(out, value);
        return this;
    }

    /** A filled path; the fill is a colour or {@code url(#id)}. */
    Svg fill(String paint, Path path) {
        out.append("<path fill=\"").append(paint).append("\" d=\"").append(path.d()).append("\"/>");
        return this;
    }

    Svg fill(String paint, double opacity, Path path) {
        out.append("<path fill=\"").append(paint).append("\" fill-opacity=\"");
        fine(out, opacity);
        out.append("\" d=\"").append(path.d()).append("\"/>");
        return this;
    }

    Svg stroke(String paint, double width, Path path) {
        return stroke(paint, width, 1, path);
    }

    Svg stroke(String paint, double width, double opacity, Path path) {
        if (path.isEmpty()) {
            return this;
        }
        out.append("<path fill=\"none\" stroke=\"").append(paint).append("\" stroke-width=\"");
        tenth(out, width);
        if (opacity < 1) {
            out.append("\" stroke-opacity=\"");
            fine(out, opacity);
        }
        out.append("\" d=\"").append(path.d()).append("\"/>");
        return this;
    }

    Svg circle(String paint, double x, double y, double r) {
        return ellipse(paint, 1, x, y, r, r);
    }

    Svg ellipse(String paint, double opacity, double x, double y, double rx, double ry) {
        out.append("<ellipse fill=\"").append(paint).append('"');
        if (opacity < 1) {
            out.append(" fill-opacity=\"");
            fine(out, opacity);
            out.append('"');
        }
        if (x != 0) {
            attr("cx", x);
        }
        if (y != 0) {
            attr("cy", y);
        }
        attr("rx", rx);
        attr("ry", ry);
        out.append("/>");
        return this;
    }

    /** Two decimals, for ratios such as opacities and scales. */
    static void fine(StringBuilder to, double value) {
        long n = Math.round(value * 100);
        if (n < 0) {
            to.append('-');
            n = -n;
        }
        if (n >= 100 || n == 0) {
            to.append(n / 100);
        }
        long rest = n % 100;
        if (rest != 0) {
            to.append('.').append((char) ('0' + rest / 10));
            if (rest % 10 != 0) {
                to.append((char) ('0' + rest % 10));
            }
        }
    }

    static void tenth(StringBuilder to, double value) {
        tenths(to, Math.round(value * 10));
    }

    static void tenths(StringBuilder to, long n) {
        if (n < 0) {
            to.append('-');
            n = -n;
        }
        long whole = n / 10;
        int rest = (int) (n % 10);
        if (whole != 0 || rest == 0) {
            to.append(whole);
        }
        if (rest != 0) {
            to.append('.').append((char) ('0' + rest));
        }
    }

    /** Escapes for text and attribute; characters that XML cannot carry are dropped. */
    static void escape(StringBuilder to, String text) {
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            i += Character.charCount(c);
            switch (c) {
                case '&' -> to.append("&amp;");
                case '<' -> to.append("&lt;");
                case '>' -> to.append("&gt;");
                case '"' -> to.append("&quot;");
                case '\t', '\n', '\r' -> to.append(' ');
                default -> {
                    boolean surrogate = c >= 0xD800 && c <= 0xDFFF;
                    if (c >= 0x20 && !surrogate && c != 0xFFFE && c != 0xFFFF) {
                        to.appendCodePoint(c);
                    }
                }
            }
        }
    }

    StringBuilder builder() {
        return out;
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
