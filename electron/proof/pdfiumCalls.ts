// The calls of PDFium's C interface that the proof uses, as the WebAssembly library offers them.

/** As in fpdfview.h, fpdf_transformpage.h and fpdf_annot.h; handles and addresses are numbers, 0 is none. */
export interface PdfiumCalls {
  readonly HEAPU8: Uint8Array;
  readonly wasmExports: { malloc(bytes: number): number; free(address: number): void };
  _FPDF_InitLibraryWithConfig(config: object): void;
  _FPDF_DestroyLibrary(): void;
  _FPDF_LoadMemDocument(address: number, bytes: number, password: number): number;
  _FPDF_GetLastError(): number;
  _FPDF_GetPageCount(document: number): number;
  _FPDF_CloseDocument(document: number): void;
  _FPDF_LoadPage(document: number, index: number): number;
  _FPDF_ClosePage(page: number): void;
  _FPDF_GetPageWidthF(page: number): number;
  _FPDF_GetPageHeightF(page: number): number;
  _FPDFPage_SetCropBox(page: number, left: number, bottom: number, right: number, top: number): void;
  _FPDFPage_GetAnnotCount(page: number): number;
  _FPDFPage_GetAnnot(page: number, index: number): number;
  _FPDFPage_RemoveAnnot(page: number, index: number): number;
  _FPDFPage_CloseAnnot(annotation: number): void;
  _FPDFAnnot_GetFlags(annotation: number): number;
  _FPDFAnnot_GetAP(annotation: number, mode: number, buffer: number, bytes: number): number;
  _FPDFBitmap_CreateEx(width: number, height: number, format: number, buffer: number, stride: number): number;
  _FPDFBitmap_FillRect(bitmap: number, x: number, y: number, w: number, h: number, colour: number): number;
  _FPDFBitmap_Destroy(bitmap: number): void;
  _FPDF_RenderPageBitmapWithMatrix(
    bitmap: number,
    page: number,
    matrix: number,
    clip: number,
    flags: number,
  ): void;
}
