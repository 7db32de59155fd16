// Layers: each one used keeps the state in which its own file opens.
import { PDFDict, type PDFDocument, PDFName, type PDFObject, PDFRef } from 'pdf-lib';
import type { OpenArt } from '../art/openArt.ts';
import { asDict, asName, entriesOf, under } from '../art/peek.ts';
import type { Copier, PlacedArt } from './copyObjects.ts';

/**
 * Writes the layers of all art into the catalog of the sheet: their default states, and for those that follow it
 * whether the sheet is looked at or printed. Does nothing where no layer was copied.
 *
 * @source ISO 32000-1, 8.11.4: optional content properties, Tables 100, 101 and 103.
 */
export function attachLayers(target: PDFDocument, sources: readonly PlacedArt[]): void {
  const { context } = target;
  const groups: PDFRef[] = [];
  const off: PDFRef[] = [];
  const automatic: PDFDict[] = [];
  for (const { art, copier } of sources) {
    const isOn = defaultStates(art);
    for (const [layer, copy] of copier.layers) {
      groups.push(copy);
      if (!isOn(layer)) off.push(copy);
    }
    automatic.push(...copyAutomatic(target, art, copier));
  }
  if (groups.length === 0) return;
  const config = { BaseState: 'ON', ON: [], OFF: off, Order: groups, AS: automatic };
  target.catalog.set(PDFName.of('OCProperties'), context.obj({ OCGs: groups, D: config }));
}

/** Whether each layer of a file is on when the file is opened. */
function defaultStates(art: OpenArt): (layer: PDFRef) => boolean {
  const { context } = art.document;
  const config = configOf(art);
  if (config === undefined) return () => true;
  const on = new Set(entriesOf(context, under(config, 'ON')));
  const off = new Set(entriesOf(context, under(config, 'OFF')));
  const base = asName(context, under(config, 'BaseState')) !== 'OFF';
  return (layer) => (base ? !off.has(layer) : on.has(layer));
}

/** The entries that switch layers by themselves, with the layers that were copied. */
function copyAutomatic(target: PDFDocument, art: OpenArt, copier: Copier): readonly PDFDict[] {
  const { context } = art.document;
  const config = configOf(art);
  const entries = config === undefined ? [] : entriesOf(context, under(config, 'AS'));
  return entries.flatMap((entry) => {
    const usage = asDict(context, entry);
    if (usage === undefined) return [];
    const layers = entriesOf(context, under(usage, 'OCGs')).flatMap((layer) => copyOf(copier, layer));
    if (layers.length === 0) return [];
    const copy = PDFDict.withContext(target.context);
    for (const key of ['Event', 'Category']) {
      const value = under(usage, key);
      if (value !== undefined) copy.set(PDFName.of(key), copier.copy(value));
    }
    copy.set(PDFName.of('OCGs'), target.context.obj(layers));
    return [copy];
  });
}

function copyOf(copier: Copier, layer: PDFObject): readonly PDFRef[] {
  const copy = layer instanceof PDFRef ? copier.layers.get(layer) : undefined;
  return copy === undefined ? [] : [copy];
}

function configOf(art: OpenArt): PDFDict | undefined {
  const { context } = art.document;
  const properties = asDict(context, under(art.catalog, 'OCProperties'));
  return properties === undefined ? undefined : asDict(context, under(properties, 'D'));
}
