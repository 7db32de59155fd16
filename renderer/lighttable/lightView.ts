// How the light table is looked at; it stays so while other stages are shown.
import { createSheetView } from '../sheet/sheetView.ts';

export const lightView = createSheetView();
