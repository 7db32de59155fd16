// The pictures of the art on the screen: one for each face however often it is placed, made anew when it is seen larger.
import type { ArtHandle } from '../../shared/contract/handles.ts';
import type { Fault } from '../../shared/fault/result.ts';
import { type ArtReading, notDrawn } from './artReading.ts';
import { drawPicture, type PictureRendering } from './drawPicture.ts';
import { faceArtKey, type PlacedFaceArt, printedPart, toPiece } from './faceArt.ts';
import { type PictureWish, planPictures, type Sight, serves } from './planPictures.ts';

export interface ArtPicture extends PictureWish {
  readonly canvas: HTMLCanvasElement;
}

/** A face that is on the screen. */
export interface SeenFace extends Pick<Sight, 'seen' | 'scale'> {
  readonly face: PlacedFaceArt;
}

export interface ArtPictures {
  /** Says what is on the screen now; pictures of anything else are freed, and files of other art are closed. */
  readonly show: (faces: readonly SeenFace[]) => void;
  /** What there is of a face, the whole before the detail; nothing until it is drawn. */
  readonly of: (face: PlacedFaceArt) => readonly ArtPicture[];
  /** Why there is no picture of a face, where its art cannot be drawn. */
  readonly faultOf: (face: PlacedFaceArt) => Fault | undefined;
  /** Hears whenever a picture has come or a fault was met. */
  readonly subscribe: (listener: () => void) => () => void;
  /** Draws art anew whose file has changed. */
  readonly forget: (art: ArtHandle) => void;
  /** How many pixels are held. */
  readonly held: () => number;
  /** Frees everything. */
  readonly close: () => void;
}

/** So long what is seen has to stay as it is before a picture is replaced by a sharper one, in ms. */
const REDRAW_DELAY_MS = 150;

export function openArtPictures(reading: ArtReading): ArtPictures {
  const listeners = new Set<() => void>();
  const faults = new Map<string, Fault>();
  let faces = new Map<string, PlacedFaceArt>();
  let wishes: readonly PictureWish[] = [];
  let pictures: readonly ArtPicture[] = [];
  let drawing: { readonly wish: PictureWish; cancel: () => void } | undefined;
  let settling: ReturnType<typeof setTimeout> | undefined;

  const tell = () => {
    for (const listener of listeners) listener();
  };
  const keep = (wanted: (picture: ArtPicture) => boolean) => {
    for (const picture of pictures) if (!wanted(picture)) free(picture.canvas);
    pictures = pictures.filter(wanted);
  };

  const draw = async (wish: PictureWish, face: PlacedFaceArt): Promise<void> => {
    let begun: PictureRendering | undefined;
    let cancelled = false;
    const cancel = () => {
      cancelled = true;
      begun?.cancel();
    };
    drawing = { wish, cancel };
    const read = await reading.page(face.art, face.page);
    if (cancelled) return;
    try {
      if (!read.ok) return fail(wish, read.fault);
      const { page, drawable } = read.value;
      begun = drawPicture(drawable, toPiece(face, page), wish.part, wish.scale);
      await begun.done;
      drawable.cleanup();
      if (cancelled) return free(begun.canvas);
      keep((p) => p.key !== wish.key || p.detail !== wish.detail);
      const picture = { ...wish, canvas: begun.canvas };
      pictures = [...pictures, picture].sort((a, b) => Number(a.detail) - Number(b.detail));
      tell();
    } catch (error) {
      if (begun !== undefined) free(begun.canvas);
      if (!cancelled) fail(wish, notDrawn(error));
    }
  };

  const fail = (wish: PictureWish, fault: Fault) => {
    faults.set(wish.key, fault);
    tell();
  };

  /** A first picture is of use at any size; one that is to replace another only as long as it is what is wanted. */
  const isOfUse = (wish: PictureWish) =>
    wishes.some((w) => serves(wish, w)) || (faces.has(wish.key) && !pictures.some((p) => p.key === wish.key));

  const drawNext = () => {
    if (drawing !== undefined) return;
    const wanted = wishes.filter((w) => !faults.has(w.key) && !pictures.some((p) => serves(p, w)));
    const missing = (w: PictureWish) => !pictures.some((p) => p.key === w.key);
    const next = wanted.find(missing) ?? (settling === undefined ? wanted[0] : undefined);
    const face = next && faces.get(next.key);
    if (next !== undefined && face !== undefined) {
      void draw(next, face).finally(() => {
        drawing = undefined;
        drawNext();
      });
    }
  };

  const forget = (art: ArtHandle) => {
    reading.forget(art);
    const its = (key: string) => faces.get(key)?.art === art;
    if (drawing !== undefined && its(drawing.wish.key)) drawing.cancel();
    for (const key of [...faults.keys()]) if (its(key)) faults.delete(key);
    keep((p) => !its(p.key));
    tell();
    drawNext();
  };

  return {
    show: (seenFaces) => {
      faces = new Map(seenFaces.map(({ face }) => [faceArtKey(face), face]));
      if (faces.size > 0) reading.keepOnly(new Set([...faces.values()].map((face) => face.art)));
      wishes = planPictures(
        seenFaces.map(({ face, seen, scale }) => ({
          key: faceArtKey(face),
          whole: printedPart(face),
          seen,
          scale,
        })),
      );
      for (const key of [...faults.keys()]) if (!faces.has(key)) faults.delete(key);
      keep((p) => wishes.some((w) => w.key === p.key && w.detail === p.detail));
      if (drawing !== undefined && !isOfUse(drawing.wish)) drawing.cancel();
      clearTimeout(settling);
      settling = setTimeout(() => {
        settling = undefined;
        drawNext();
      }, REDRAW_DELAY_MS);
      drawNext();
    },
    of: (face) => {
      const key = faceArtKey(face);
      return pictures.filter((p) => p.key === key);
    },
    faultOf: (face) => faults.get(faceArtKey(face)),
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    forget,
    held: () => pictures.reduce((sum, { canvas }) => sum + canvas.width * canvas.height, 0),
    close: () => {
      clearTimeout(settling);
      settling = undefined;
      wishes = [];
      faces = new Map();
      drawing?.cancel();
      keep(() => false);
      faults.clear();
      reading.close();
    },
  };
}

function free(canvas: HTMLCanvasElement): void {
  canvas.width = 0;
  canvas.height = 0;
}
