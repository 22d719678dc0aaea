package boughwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class QrCodeTest {

    @Test
    void a_reader_reads_from_the_bars_what_was_put_in() throws Exception {
        String address = "https://trees.example/at-home/kelp-4-moss";
        QrCode code = new QrCode(address);
        int scale = 6;
        int side = (code.size() + 2 * QrCode.QUIET) * scale;
        int[] pixels = new int[side * side];
        Arrays.fill(pixels, 0xffffff);
        for (QrCode.Bar bar : code.bars()) {
            for (int y = (bar.y() + QrCode.QUIET) * scale; y < (bar.y() + 1 + QrCode.QUIET) * scale; y++) {
                Arrays.fill(pixels, y * side + (bar.x() + QrCode.QUIET) * scale, y * side + (bar.x() + bar.width() + QrCode.QUIET) * scale, 0);
            }
        }
        var read = new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(side, side, pixels))));
        assertThat(read.getText()).isEqualTo(address);
    }

    @Test
    void the_drawing_says_what_it_leads_to_and_keeps_its_quiet_zone() {
        QrCode code = new QrCode("https://trees.example/at-home/kelp-4-moss");
        int whole = code.size() + 2 * QrCode.QUIET;
        assertThat(code.svg("To <home> & back")).contains("To &lt;home&gt; &amp; back").contains("viewBox=\"0 0 " + whole + " " + whole + "\"");
        assertThat(code.bars()).allSatisfy(b -> assertThat(b.x() + b.width()).isLessThanOrEqualTo(code.size()));
    }

    @Test
    void what_no_code_holds_is_refused() {
        assertThatThrownBy(() -> new QrCode("x".repeat(5000))).isInstanceOf(IllegalArgumentException.class);
    }
}
