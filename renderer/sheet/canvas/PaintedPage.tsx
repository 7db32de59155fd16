// A page of paper as a canvas of its own, which can lie anywhere and be turned.
import { Stage } from 'react-konva';
import type { Size } from '../../../shared/geometry/space.ts';
import { type Paint, PaintedLayer } from './PaintedLayer.tsx';

/** A page has no more pixels than this; one that is seen very near is drawn a little coarser. */
const MAX_PAGE_PIXELS = 2 ** 22;

/** `size` in px of the window. */
export function PaintedPage({ size, paint }: { readonly size: Size; readonly paint: Paint }) {
  const { w, h } = size;
  return (
    <Stage width={Math.max(1, w)} height={Math.max(1, h)} listening={false}>
      <PaintedLayer paint={paint} mostRatio={Math.sqrt(MAX_PAGE_PIXELS / Math.max(1, w * h))} />
    </Stage>
  );
}
