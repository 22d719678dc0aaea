package boughwright.drawing;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** An address as a QR code (ISO/IEC 18004, error correction M), for print and screen. The same text gives the same code. */
public final class QrCode {

    /** A run of dark modules in one row, in modules from the upper left of the code without its quiet zone. */
    public record Bar(int x, int y, int width) {
    }

    /** Light modules that must surround it. */
    public static final int QUIET = 4;

    private final int size;
    private final List<Bar> bars = new ArrayList<>();

    /** @throws IllegalArgumentException when the text is too long for a code */
    public QrCode(String text) {
        try {
            BitMatrix matrix = new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 0, 0,
                    Map.of(EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.M, EncodeHintType.MARGIN, 0, EncodeHintType.CHARACTER_SET, "UTF-8"));
            this.size = matrix.getWidth();
            for (int y = 0; y < size; y++) {
                row(matrix, y);
            }
        } catch (WriterException e) {
            throw new IllegalArgumentException("no QR code holds " + text.length() + " characters", e);
        }
    }

    private void row(BitMatrix matrix, int y) {
        int x = 0;
        while (x < size) {
            int from = x;
            while (x < size && matrix.get(x, y)) {
                x++;
            }
            if (x > from) {
                bars.add(new Bar(from, y, x - from));
            } else {
                x++;
            }
        }
    }

    /** Modules along one side, without the quiet zone. */
    public int size() {
        return size;
    }

    public List<Bar> bars() {
        return List.copyOf(bars);
    }

    /** Dark on white with its quiet zone, as a drawing of its own. @param title what it leads to */
    public String svg(String title) {
        int whole = size + 2 * QUIET;
        Svg svg = new Svg(8000);
        svg.raw("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" shape-rendering=\"crispEdges\"").attr("viewBox", "0 0 " + whole + ' ' + whole).raw("><title>")
                .text(title).raw("</title><path fill=\"#fff\" d=\"M0 0h").raw(whole + "v" + whole + "H0z\"/><path fill=\"#000\" d=\"");
        bars.forEach(b -> svg.raw("M" + (b.x() + QUIET) + ' ' + (b.y() + QUIET) + 'h' + b.width() + "v1h-" + b.width() + 'z'));
        return svg.raw("\"/></svg>").builder().toString();
    }
}
