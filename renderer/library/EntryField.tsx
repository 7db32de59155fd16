// A field of the library's editor: what is wrong with it is told in a sentence that begins with its name.
import { Field, type FieldProps } from '../controls/Field.tsx';
import { hasWrong, type Wrongs } from './draft/takeDraft.ts';

interface EntryFieldProps extends Omit<FieldProps, 'wrong' | 'onEnter'> {
  /** Its name in a written library. */
  readonly field: string;
  readonly wrongs: Wrongs;
}

export function EntryField({ field, wrongs, ...rest }: EntryFieldProps) {
  return <Field {...rest} wrong={sayWrong(rest.label, field, wrongs)} />;
}

/** What is wrong in this field or inside it, as a sentence; nothing where it is in order. */
export function sayWrong(label: string, field: string, wrongs: Wrongs): string | undefined {
  const found = Object.keys(wrongs).find((wrong) => hasWrong({ [wrong]: '' }, field));
  const says = found === undefined ? undefined : wrongs[found];
  if (says === undefined) return undefined;
  const goesOn = /^(must|has|is) /.test(says);
  const sentence = goesOn ? `${label} ${says}` : `${label}: ${says}`;
  return /[.!?]$/.test(sentence) ? sentence : `${sentence}.`;
}
