import { escapeMarkup } from './clean.ts';

/** A piece of HTML or SVG that is already escaped: the only thing that goes in unescaped. */
export interface Markup {
  readonly markup: string;
}

export type Child = Markup | string | number | null | readonly Child[];

type Attributes = Readonly<Record<string, string | number | null>>;

/** Elements that have neither content nor an end tag. */
const VOID = new Set(['meta', 'br', 'hr']);
/** Elements of SVG that may close themselves. */
const SELF_CLOSING = new Set(['path', 'line', 'rect', 'circle', 'polygon', 'polyline']);

const written = (child: Child): string => {
  if (child === null) return '';
  if (typeof child === 'string') return escapeMarkup(child);
  if (typeof child === 'number') return String(child);
  return 'markup' in child ? child.markup : child.map(written).join('');
};

/** Lengths to a hundredth: finer than any eye. */
const attributeValue = (value: string | number): string =>
  typeof value === 'number' ? String(Math.round(value * 100) / 100) : value;

const attributeText = (attributes: Attributes): string =>
  Object.entries(attributes)
    .filter(([, value]) => value !== null)
    .map(([name, value]) => ` ${name}="${escapeMarkup(attributeValue(value!))}"`)
    .join('');

/** One element; text among the children is escaped, `null` attributes and children are left out. */
export const el = (name: string, attributes: Attributes = {}, ...children: Child[]): Markup => {
  const open = `<${name}${attributeText(attributes)}`;
  if (SELF_CLOSING.has(name) && children.length === 0) return { markup: `${open}/>` };
  if (VOID.has(name)) return { markup: `${open}>` };
  return { markup: `${open}>${written(children)}</${name}>` };
};

/** Markup that is known to be safe as it stands: styles, the document type. */
export const raw = (markup: string): Markup => ({ markup });
