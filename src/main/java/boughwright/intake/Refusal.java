package boughwright.intake;

import boughwright.brief.Word;

/** Why a whole file is not read; each has a sentence under {@code intake.refusal.} that says how to mend it. */
public enum Refusal implements Word {
    /** Nothing in it. */
    EMPTY,
    /** A heading and no row below it. */
    NO_ROWS,
    /** The old binary spreadsheet (.xls), or an XLSX with a password, which comes in the same wrapping. */
    OLD_SPREADSHEET,
    /** A packed file that is no XLSX. */
    OTHER_ARCHIVE,
    /** No CSV, XLSX or JSON. */
    UNKNOWN,
    /** Text of one column only. */
    ONE_COLUMN,
    /** JSON that holds no list of products. */
    NO_LIST,
    /** A spreadsheet of hidden or empty sheets. */
    NO_SHEET,
    /** Recognised, and then not as its format demands. */
    BROKEN,
    /** More bytes than {@link Limits#fileBytes}. */
    FILE_SIZE,
    /** More rows than {@link Limits#rows}. */
    ROWS,
    /** More columns than {@link Limits#columns}. */
    COLUMNS,
    /** A text that no cell could hold. */
    TEXT_LENGTH,
    /** More than {@link Limits#unpackedBytes}. */
    UNPACKED_SIZE,
    /** More than {@link Limits#packRatio}. */
    PACK_RATIO,
    /** More than {@link Limits#packedParts}. */
    PACKED_PARTS,
    /** A document type or an entity of its own in an XLSX. */
    XML_ENTITIES,
    /** More than {@link Limits#jsonDepth}. */
    JSON_DEPTH,
    /** No heading or constant was given for a column that the kind of file must have. */
    MAPPING
}
