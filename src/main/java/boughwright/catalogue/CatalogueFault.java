package boughwright.catalogue;

import boughwright.text.Text;

/**
 * One thing wrong in a catalogue file.
 *
 * @param line from 1, the header being line 1
 * @param column its heading, or empty when the whole line is at fault
 * @param value what stands there
 * @param mend what to write instead
 */
public record CatalogueFault(int line, String column, String value, String mend) {

    public String sentence() {
        return column.isEmpty()
                ? Text.of("catalogue.fault.line", String.valueOf(line), mend)
                : Text.of("catalogue.fault", String.valueOf(line), column, value, mend);
    }
}
