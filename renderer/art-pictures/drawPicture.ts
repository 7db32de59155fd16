// Drawing a part of a page of the art, as it will print.
import type { PDFPageProxy, RenderTask } from 'pdfjs-dist';
import type { Rect } from '../../shared/geometry/space.ts';
import { chain, inverse, type Transform } from '../../shared/geometry/transform.ts';

export interface PictureRendering {
  readonly canvas: HTMLCanvasElement;
  readonly done: Promise<void>;
  readonly cancel: () => void;
}

/**
 * Draws `part` of the piece at `scale` px to the pt, `toPiece` leading from the page to the piece. Layers and notes
 * are those that print. The window gets its turn between the strokes.
 */
export function drawPicture(
  page: PDFPageProxy,
  toPiece: Transform<'user', 'piece'>,
  part: Rect<'piece'>,
  scale: number,
): PictureRendering {
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.ceil(part.w * scale));
  canvas.height = Math.max(1, Math.ceil(part.h * scale));
  const toPicture: Transform<'piece', 'screen'> = {
    a: scale,
    b: 0,
    c: 0,
    d: -scale,
    e: -part.x * scale,
    f: (part.y + part.h) * scale,
  };
  const viewport = page.getViewport({ scale: 1 });
  const [a, b, c, d, e, f] = viewport.transform as [number, number, number, number, number, number];
  const asViewed: Transform<'user', 'art'> = { a, b, c, d, e, f };
  const m = chain(inverse(asViewed), chain(toPiece, toPicture));
  const task: RenderTask = page.render({
    canvas,
    viewport,
    transform: [m.a, m.b, m.c, m.d, m.e, m.f],
    intent: 'print',
  });
  task.onContinue = (goOn: () => void) => {
    setTimeout(goOn);
  };
  return { canvas, done: task.promise, cancel: () => task.cancel() };
}
