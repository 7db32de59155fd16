// The edges of the sheet as they are named in a form.
import type { SheetEdge } from '../../shared/geometry/sheet.ts';

export const SHEET_EDGES: readonly { readonly edge: SheetEdge; readonly label: string }[] = [
  { edge: 'lead', label: 'lead' },
  { edge: 'tail', label: 'tail' },
  { edge: 'left', label: 'left' },
  { edge: 'right', label: 'right' },
];
