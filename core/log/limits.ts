/**
 * Every bound of the reader, in one place: what is beyond them is refused or rejected by name, so
 * that no file can make the tool hang or take the machine's memory. All are chosen: far above any
 * log a kiln makes (a year of readings once a second is about 1.2 GB; a firing, a few MB).
 */

/** A larger file is refused (`too-large`). */
export const MAX_FILE_BYTES = 512 * 1024 * 1024;

/** JSON is held as text while it is read, so its bound is lower. */
export const MAX_JSON_BYTES = 128 * 1024 * 1024;

/** A longer line of delimited text is rejected unread (`line-too-long`). */
export const MAX_LINE_BYTES = 64 * 1024;

/** Cells beyond this many in one row are not split off. */
export const MAX_COLUMNS = 1024;

/** A cell longer than this is text: no number, time or mark is looked for in it. */
export const MAX_VALUE_CHARS = 80;

/** A quoted cell may run over at most this many lines. */
export const MAX_QUOTED_LINES = 20;

/** Deeper JSON is refused. */
export const MAX_JSON_DEPTH = 64;

/** Different channel names of a long table, or series of a JSON file. */
export const MAX_SERIES = 256;

/** Other temperature columns that are kept as zones. */
export const MAX_ZONES = 32;

/** A rejected row's text is cut to this many characters, and ends in `…` where it was. */
export const REJECTED_TEXT_CHARS = 200;

/** Column names are cut to this many characters. */
export const MAX_NAME_CHARS = 120;

/** How far from the file's start the table's first row is looked for. */
export const HEAD_BYTES = 256 * 1024;
export const HEAD_LINES = 1500;

/** Blocks of lines taken from the rest of a long file, spread evenly, the last at its end. */
export const SAMPLE_BLOCKS = 16;
export const SAMPLE_BLOCK_LINES = 30;

/** A log needs this many usable rows to be one. */
export const MIN_ROWS = 2;
