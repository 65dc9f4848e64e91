/** The colours of the sheet; the test holds every pair that carries text to WCAG AA. */
export interface Palette {
  readonly paper: string;
  /** A little off the paper, for bands and tables. */
  readonly wash: string;
  readonly ink: string;
  readonly muted: string;
  readonly rule: string;
  readonly accent: string;
  /** Hotter than planned, and cooler. */
  readonly hot: string;
  readonly cold: string;
}

export const LIGHT: Palette = {
  paper: '#fdfcf9',
  wash: '#f3f0e9',
  ink: '#1f1d1a',
  muted: '#5f5a52',
  rule: '#d8d2c6',
  accent: '#8a4b0f',
  hot: '#b03a1c',
  cold: '#1f5f99',
};

export const DARK: Palette = {
  paper: '#1b1a17',
  wash: '#26241f',
  ink: '#ece8df',
  muted: '#aea79a',
  rule: '#48443b',
  accent: '#e7a765',
  hot: '#f0906c',
  cold: '#82b6e8',
};

/** A palette as custom properties. */
export const paletteCss = (palette: Palette): string =>
  Object.entries(palette)
    .map(([name, colour]) => `--${name}:${String(colour)}`)
    .join(';');
