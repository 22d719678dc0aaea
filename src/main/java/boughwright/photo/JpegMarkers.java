package boughwright.photo;

/**
 * What the markers of a JPEG tell before it is unpacked (ITU-T T.81, Annex B).
 *
 * @param components colours that each pixel is made of; 4 are printing inks; 0 when no frame was found
 * @param whole whether the end of the image is there
 * @param scans passes over the picture
 * @param kept whether unpacking keeps the whole picture in memory because its passes refine or complete each other
 */
record JpegMarkers(int components, boolean whole, int scans, boolean kept) {

    private static final int SOF_PROGRESSIVE = 0xC2;
    private static final int EOI = 0xD9;
    private static final int SOS = 0xDA;

    static JpegMarkers of(byte[] jpeg) {
        int components = 0;
        int scans = 0;
        boolean kept = false;
        int at = 2;
        while (at + 3 < jpeg.length + 2) {
            at = next(jpeg, at);
            if (at < 0) {
                break;
            }
            int marker = jpeg[at + 1] & 255;
            if (marker == EOI) {
                return new JpegMarkers(components, true, scans, kept);
            }
            if (at + 3 >= jpeg.length) {
                break;
            }
            int length = (jpeg[at + 2] & 255) << 8 | jpeg[at + 3] & 255;
            if (frame(marker) && at + 9 < jpeg.length) {
                components = jpeg[at + 9] & 255;
                kept |= marker == SOF_PROGRESSIVE;
            }
            if (marker == SOS && at + 4 < jpeg.length) {
                scans++;
                kept |= (jpeg[at + 4] & 255) < components;
            }
            at += 2 + Math.max(2, length);
        }
        return new JpegMarkers(components, false, scans, kept);
    }

    /** C4, C8 and CC are tables, not frames. */
    private static boolean frame(int marker) {
        return marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
    }

    /** Where the next marker stands; packed data and restarts are passed by. */
    private static int next(byte[] jpeg, int from) {
        for (int at = from; at + 1 < jpeg.length; at++) {
            int code = jpeg[at + 1] & 255;
            if ((jpeg[at] & 255) == 0xFF && code != 0 && code != 0xFF && (code < 0xD0 || code > 0xD8) && code != 1) {
                return at;
            }
        }
        return -1;
    }
}
