/**
 * First bytes of file formats that people pick by mistake, from the formats' own specifications
 * (e.g. PNG, RFC 2083 3.1; gzip, RFC 1952 2.3.1; ZIP APPNOTE 4.3.7; SQLite file format 1.2).
 */
interface Signature {
  readonly magic: readonly number[];
  /** What the file is, to be read after "this is". */
  readonly kind: string;
  readonly remedy: string;
}

const ascii = (text: string): number[] => [...text].map((letter) => letter.charCodeAt(0));

const EXPORT_TEXT = 'export the log as CSV or text and give that file';
const EXPORT_SHEET =
  'open it in a spreadsheet, save the sheet with the readings as CSV and give that';
const UNPACK = 'unpack it and give the log that is inside';

const SIGNATURES: readonly Signature[] = [
  { magic: [0x89, ...ascii('PNG')], kind: 'a picture (PNG)', remedy: EXPORT_TEXT },
  { magic: [0xff, 0xd8, 0xff], kind: 'a picture (JPEG)', remedy: EXPORT_TEXT },
  { magic: ascii('GIF8'), kind: 'a picture (GIF)', remedy: EXPORT_TEXT },
  { magic: [...ascii('II*'), 0], kind: 'a picture (TIFF)', remedy: EXPORT_TEXT },
  { magic: [...ascii('MM'), 0, 0x2a], kind: 'a picture (TIFF)', remedy: EXPORT_TEXT },
  { magic: ascii('RIFF'), kind: 'a sound, film or picture file', remedy: EXPORT_TEXT },
  { magic: ascii('%PDF'), kind: 'a PDF document', remedy: EXPORT_TEXT },
  { magic: ascii('{\\rtf'), kind: 'a word processor document', remedy: EXPORT_TEXT },
  { magic: [...ascii('PK'), 3, 4], kind: 'a workbook or a zip archive', remedy: EXPORT_SHEET },
  { magic: [...ascii('PK'), 5, 6], kind: 'an empty zip archive', remedy: EXPORT_SHEET },
  {
    magic: [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1],
    kind: 'an old workbook or office document',
    remedy: EXPORT_SHEET,
  },
  { magic: [...ascii('SQLite format 3'), 0], kind: 'a database', remedy: EXPORT_TEXT },
  { magic: [0x1f, 0x8b], kind: 'a compressed file (gzip)', remedy: UNPACK },
  { magic: [...ascii('BZh')], kind: 'a compressed file (bzip2)', remedy: UNPACK },
  { magic: [0xfd, ...ascii('7zXZ'), 0], kind: 'a compressed file (xz)', remedy: UNPACK },
  { magic: [...ascii('7z'), 0xbc, 0xaf], kind: 'a compressed file (7z)', remedy: UNPACK },
  { magic: ascii('Rar!'), kind: 'a compressed file (rar)', remedy: UNPACK },
  { magic: [0x7f, ...ascii('ELF')], kind: 'a program', remedy: EXPORT_TEXT },
  { magic: [0x89, ...ascii('HDF')], kind: 'a data file (HDF5)', remedy: EXPORT_TEXT },
  { magic: ascii('PAR1'), kind: 'a data file (Parquet)', remedy: EXPORT_TEXT },
];

/** What a file is whose first bytes say that it is no text, or null. */
export const foreignFormat = (bytes: Uint8Array): { kind: string; remedy: string } | null =>
  SIGNATURES.find(({ magic }) => magic.every((byte, index) => bytes[index] === byte)) ?? null;
