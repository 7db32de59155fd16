// A field of the library's editor: what is wrong with it is told in a sentence that begins with its name.
import { Field, type FieldProps } from '../controls/Field.tsx';
import type { LibraryErrors } from './draft/takeDraft.ts';
import { sayWrong } from './sayWrong.ts';

interface EntryFieldProps extends Omit<FieldProps, 'wrong' | 'onEnter'> {
  /** Its name in a written library. */
  readonly field: string;
  readonly wrongs: LibraryErrors;
}

export function EntryField({ field, wrongs, ...rest }: EntryFieldProps) {
  return <Field {...rest} wrong={sayWrong(rest.label, field, wrongs)} />;
}
