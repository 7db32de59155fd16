// Output intents: the printing condition that the art was made for, carried over when all of it agrees.
import { type PDFDict, type PDFDocument, PDFHexString, PDFName, PDFString } from 'pdf-lib';
import type { OpenArt } from '../art/openArt.ts';
import { asDict, asName, asStream, entriesOf, follow, under } from '../art/peek.ts';
import type { PlacedArt } from './copyObjects.ts';

/** One printing condition, as far as two of them can be told apart. */
interface Intent {
  readonly dict: PDFDict;
  readonly standard: string;
  readonly condition: string;
  readonly profile: Uint8Array | undefined;
}

/**
 * Writes the output intents of the art into the catalog of the sheet if every file has the same ones; else says in
 * words which file was made for what. A profile counts as the same when it is the same in every byte as packed.
 *
 * @source ISO 32000-1, 14.11.5, Table 365.
 */
export function carryIntents(target: PDFDocument, sources: readonly PlacedArt[]): readonly string[] {
  const all = sources.map(({ art }) => readIntents(art));
  const [first, ...others] = all;
  const source = sources[0];
  if (first === undefined || source === undefined || all.every((intents) => intents.length === 0)) return [];
  if (!others.every((intents) => sameIntents(first, intents))) {
    const made = sources.map(({ art }, i) => `${art.name} for ${conditionsOf(all[i] ?? [])}`);
    return [
      `The art was made for different printing conditions (${made.join(', ')}), so the sheet names none. Look at the colours on a proof, or export all art for one condition.`,
    ];
  }
  const copies = first.map(({ dict }) => source.copier.copy(dict));
  target.catalog.set(PDFName.of('OutputIntents'), target.context.obj(copies));
  return [];
}

function readIntents({ document, catalog }: OpenArt): readonly Intent[] {
  const { context } = document;
  return entriesOf(context, under(catalog, 'OutputIntents')).flatMap((entry) => {
    const dict = asDict(context, entry);
    if (dict === undefined) return [];
    return [
      {
        dict,
        standard: asName(context, under(dict, 'S')) ?? '',
        condition: textOf(dict, 'OutputConditionIdentifier') || textOf(dict, 'OutputCondition'),
        profile: asStream(context, under(dict, 'DestOutputProfile'))?.contents,
      },
    ];
  });
}

function textOf(dict: PDFDict, key: string): string {
  const text = follow(dict.context, under(dict, key));
  return text instanceof PDFString || text instanceof PDFHexString ? text.decodeText() : '';
}

function sameIntents(some: readonly Intent[], others: readonly Intent[]): boolean {
  return some.length === others.length && some.every((one, i) => sameIntent(one, others[i]));
}

function sameIntent(one: Intent, other: Intent | undefined): boolean {
  return (
    other !== undefined &&
    one.standard === other.standard &&
    one.condition === other.condition &&
    sameBytes(one.profile, other.profile)
  );
}

function sameBytes(one: Uint8Array | undefined, other: Uint8Array | undefined): boolean {
  if (one === undefined || other === undefined) return one === other;
  return one.length === other.length && one.every((byte, i) => byte === other[i]);
}

function conditionsOf(intents: readonly Intent[]): string {
  return intents.map(({ condition }) => condition || 'a condition without a name').join(' and ') || 'none';
}
