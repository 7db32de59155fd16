// What is wrong with a field of the library, as a sentence that begins with its name.
import { hasWrong, type LibraryErrors } from './draft/takeDraft.ts';

/** What is wrong in this field or inside it; nothing where it is in order. */
export function sayWrong(label: string, field: string, wrongs: LibraryErrors): string | undefined {
  const found = Object.keys(wrongs).find((wrong) => hasWrong({ [wrong]: '' }, field));
  const says = found === undefined ? undefined : wrongs[found];
  if (says === undefined) return undefined;
  const goesOn = /^(must|has|is) /.test(says);
  const sentence = goesOn ? `${label} ${says}` : `${label}: ${says}`;
  return /[.!?]$/.test(sentence) ? sentence : `${sentence}.`;
}
