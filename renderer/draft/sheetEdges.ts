// The edges of the sheet as they are named in a form.
import type { SheetEdge } from '../../shared/geometry/sheet.ts';

export const SHEET_EDGES: readonly { readonly edge: SheetEdge; readonly label: string }[] = [
  { edge: 'lead', label: 'Unprintable lead' },
  { edge: 'tail', label: 'Unprintable tail' },
  { edge: 'left', label: 'Unprintable left' },
  { edge: 'right', label: 'Unprintable right' },
];
