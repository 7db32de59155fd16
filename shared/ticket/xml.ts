// XML as text: elements and attributes, with everything that would break it made harmless.

/** An element, before it is written. */
export interface Element {
  readonly name: string;
  /** In the order they are written; what is undefined is left out. */
  readonly attributes: Readonly<Record<string, string | number | boolean | undefined>>;
  readonly inside: readonly Element[] | string;
}

export function element(
  name: string,
  attributes: Element['attributes'] = {},
  inside: Element['inside'] = [],
): Element {
  return { name, attributes, inside };
}

/** The document of an element: a line for each element, two spaces deep, in UTF-8. */
export function writeXml(root: Element): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${writeElement(root, '')}`;
}

function writeElement({ name, attributes, inside }: Element, indent: string): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${escapeAttribute(`${value}`)}"`);
  const open = `${indent}<${name}${written.join('')}`;
  if (inside.length === 0) return `${open}/>\n`;
  if (typeof inside === 'string') return `${open}>${escapeText(inside)}</${name}>\n`;
  const children = inside.map((child) => writeElement(child, `${indent}  `)).join('');
  return `${open}>\n${children}${indent}</${name}>\n`;
}

/** Characters that XML 1.0 has no way to write (section 2.2), halves of pairs among them. */
const UNWRITABLE = /[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu;

/** @source W3C XML 1.0, 2.2 (characters), 2.4 (markup in text), 2.11 (line ends). */
function escapeText(text: string): string {
  return text
    .replace(UNWRITABLE, '\uFFFD')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('\r', '&#13;');
}

/** Tabs and line ends would come back as spaces (W3C XML 1.0, 3.3.3). */
function escapeAttribute(text: string): string {
  return escapeText(text).replaceAll('"', '&quot;').replaceAll('\n', '&#10;').replaceAll('\t', '&#9;');
}
