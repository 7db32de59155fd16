// One layer of a canvas that is painted by a function: painted again when it is given another one.
import type Konva from 'konva';
import { useLayoutEffect, useRef } from 'react';
import { Layer, Shape } from 'react-konva';
import type { Pen } from '../paint/pen.ts';
import { usePixelRatio } from './usePixelRatio.ts';

/** Paints in px of the window. */
export type Paint = (pen: Pen) => void;

/** `mostRatio` limits the pixels of the device for each px of the window. */
export function PaintedLayer({
  paint,
  mostRatio = Number.POSITIVE_INFINITY,
}: {
  readonly paint: Paint;
  readonly mostRatio?: number;
}) {
  const layer = useRef<Konva.Layer>(null);
  const ratio = Math.min(usePixelRatio(), mostRatio);
  useLayoutEffect(() => {
    const canvas = layer.current?.getCanvas();
    if (canvas === undefined || canvas.getPixelRatio() === ratio) return;
    canvas.setPixelRatio(ratio);
    layer.current?.batchDraw();
  }, [ratio]);
  return (
    <Layer ref={layer} listening={false}>
      <Shape listening={false} perfectDrawEnabled={false} sceneFunc={paint} />
    </Layer>
  );
}
