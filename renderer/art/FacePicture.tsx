// The picture of a face: what is printed of its page, with the trim drawn where the knife goes.
import { useEffect, useRef } from 'react';
import { type PlacedFaceArt, printedPart } from '../art-pictures/faceArt.ts';
import { artPictures } from '../art-pictures/windowArt.ts';

/** The longer side of a picture on the screen, in px. */
const LONG_SIDE_PX = 260;

/** Px of the window for each pt of the face. */
export function scaleOf(face: PlacedFaceArt): number {
  const { w, h } = printedPart(face);
  return LONG_SIDE_PX / Math.max(w, h);
}

export function FacePicture({ face, label }: { readonly face: PlacedFaceArt; readonly label: string }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const part = printedPart(face);
  const scale = scaleOf(face);
  useEffect(() => {
    const draw = () => {
      if (canvas.current !== null) paint(canvas.current, face);
    };
    draw();
    return artPictures.subscribe(draw);
  }, [face]);
  return (
    <canvas
      ref={canvas}
      className="face-picture"
      role="img"
      aria-label={label}
      style={{ width: part.w * scale, height: part.h * scale }}
    />
  );
}

function paint(canvas: HTMLCanvasElement, face: PlacedFaceArt): void {
  const part = printedPart(face);
  const scale = scaleOf(face) * devicePixelRatio;
  canvas.width = Math.round(part.w * scale);
  canvas.height = Math.round(part.h * scale);
  const paper = canvas.getContext('2d');
  if (paper === null) throw new Error('This window cannot draw');
  paper.fillStyle = '#fff';
  paper.fillRect(0, 0, canvas.width, canvas.height);
  for (const picture of artPictures.of(face)) {
    paper.drawImage(
      picture.canvas,
      (picture.part.x - part.x) * scale,
      (part.y + part.h - picture.part.y - picture.part.h) * scale,
      picture.part.w * scale,
      picture.part.h * scale,
    );
  }
  paintTrim(paper, face, scale);
}

/** A dark line with a light one beside it, so that it is seen on any art. */
function paintTrim(paper: CanvasRenderingContext2D, { trim, bleed }: PlacedFaceArt, scale: number): void {
  const at = bleed * scale;
  paper.lineWidth = devicePixelRatio;
  paper.strokeStyle = '#fff';
  paper.strokeRect(
    at - paper.lineWidth,
    at - paper.lineWidth,
    trim.w * scale + 2 * paper.lineWidth,
    trim.h * scale + 2 * paper.lineWidth,
  );
  paper.strokeStyle = '#1b1b1b';
  paper.strokeRect(at, at, trim.w * scale, trim.h * scale);
}
