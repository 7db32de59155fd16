// Locked PDFs: what their author lets others do, and the refusal when they do not open.
import { type PDFContext, PDFDict } from 'pdf-lib';
import type { Fault } from '../../fault/result.ts';
import { asNumber, follow, under } from './peek.ts';

/** What a permission bit is for, in the words of the sentence it goes into. */
const PERMISSIONS: readonly (readonly [bit: number, words: string])[] = [
  [3, 'printing'],
  [4, 'changing'],
  [11, 'putting its pages together with others'],
];

/**
 * What the author of a locked file asked not to be done with it, said and not acted on: whether the job may be
 * printed is between the person and the author. None where nothing that matters here is forbidden.
 *
 * @source ISO 32000-1, Table 22: user access permissions, bit 3 print, bit 4 modify, bit 11 assemble.
 */
export function forbiddenWords(context: PDFContext, art: string): readonly string[] {
  const lock = follow(context, context.trailerInfo.Encrypt);
  const allowed = lock instanceof PDFDict ? asNumber(context, under(lock, 'P')) : undefined;
  if (allowed === undefined) return [];
  const forbidden = PERMISSIONS.filter(([bit]) => (allowed & (1 << (bit - 1))) === 0).map(
    ([, words]) => words,
  );
  if (forbidden.length === 0) return [];
  return [
    `The author of ${art} has not allowed ${listOf(forbidden)}. Ask for permission, or for a file without restrictions.`,
  ];
}

/** The refusal of a file that does not open with the password at hand. */
export function refuseLocked(art: string, password: string): Fault {
  return {
    code: 'art-locked',
    message:
      password === '' ? `${art} needs a password to open.` : `The password given does not open ${art}.`,
    remedy: 'Ask the author for the PDF without a password, or export it again without one.',
    where: art,
  };
}

function listOf(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} or ${last}`;
}
