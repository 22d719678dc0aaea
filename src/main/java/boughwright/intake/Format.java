package boughwright.intake;

import boughwright.brief.Word;

/** The formats that are read and written. */
public enum Format implements Word {
    CSV("text/csv; charset=utf-8"),
    XLSX("application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"),
    JSON("application/json");

    private final String mediaType;

    Format(String mediaType) {
        this.mediaType = mediaType;
    }

    public String mediaType() {
        return mediaType;
    }

    /** What stands after the point of a file's name. */
    public String extension() {
        return word();
    }
}
