// XML read by libxml2, which had no part in writing it: well-formed, and by what the published schema allows.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { XmlDocument, type XmlElement, XsdValidator } from 'libxml2-wasm';

/** An element as it was read: attributes by name, children in order, and its own text. */
export interface ReadElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly inside: readonly ReadElement[];
  readonly text: string;
}

/** The document's root. Throws for XML that is not well-formed. */
export function readXml(xml: string): ReadElement {
  const document = XmlDocument.fromString(xml);
  try {
    return readElement(document.root);
  } finally {
    document.dispose();
  }
}

function readElement(element: XmlElement): ReadElement {
  const inside: ReadElement[] = [];
  for (let child = element.firstChild; child !== null; child = child.next) {
    if ('attrs' in child) inside.push(readElement(child as XmlElement));
  }
  return {
    name: element.name,
    attributes: Object.fromEntries(element.attrs.map((attr) => [attr.name, attr.content])),
    inside,
    text: element.content,
  };
}

/** What the schema of the ticket has against this XML; nothing for a good one. */
export function faultsOfTicket(xml: string): string {
  const schema = XmlDocument.fromString(
    readFileSync(join(import.meta.dirname, '../reference/xjdf.xsd'), 'utf8'),
  );
  const document = XmlDocument.fromString(xml);
  const validator = XsdValidator.fromDoc(schema);
  try {
    validator.validate(document);
    return '';
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  } finally {
    validator.dispose();
    document.dispose();
    schema.dispose();
  }
}

/** All elements of this name, wherever they are, in order. */
export function allOf(root: ReadElement, name: string): readonly ReadElement[] {
  const below = root.inside.flatMap((child) => allOf(child, name));
  return root.name === name ? [root, ...below] : below;
}
