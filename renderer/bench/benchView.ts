// How the bench of this window is looked at; it stays so while other stages are shown.
import { createSheetView } from '../sheet/sheetView.ts';

export const benchView = createSheetView();
