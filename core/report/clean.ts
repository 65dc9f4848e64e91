/**
 * Characters that a name from a file must not bring into a report: control characters (a terminal
 * obeys some of them), and the marks that turn the direction of text (they can make a name read as
 * another). Line ends and tabs become blanks.
 */
const UNWANTED =
  // eslint-disable-next-line no-control-regex -- these are what is looked for
  /[\u0000-\u0008\u000e-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]/g;

/** Text that is safe to show: every unwanted character stands as a visible mark of replacement. */
export const clean = (text: string): string =>
  text.replace(/[\t\n\v\f\r\u2028\u2029]+/g, ' ').replace(UNWANTED, '\ufffd');

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text for HTML or SVG, in an element or between an attribute's quotes. */
export const escapeMarkup = (text: string): string =>
  clean(text).replace(/[&<>"']/g, (sign) => ENTITIES[sign] ?? sign);

/** Prose in which a number keeps to its unit, so that no line breaks between `60` and `°C/h`. */
export const prose = (text: string): string =>
  text.replace(/(\d) (?=(?:°[CF]|h|min|s|%)(?![a-z]))/g, '$1\u00a0');
