// Making pages of the art into forms of the sheet's file: each page once, however often it is placed.
import type { PDFDocument, PDFRef } from 'pdf-lib';
import { ok, type Result } from '../../fault/result.ts';
import type { Head } from '../../geometry/head.ts';
import type { Rect } from '../../geometry/space.ts';
import type { OpenArt } from '../art/openArt.ts';
import { createCopier, type PlacedArt } from './copyObjects.ts';
import { carryIntents } from './intents.ts';
import { attachLayers } from './layers.ts';
import { makePageForm } from './pageForm.ts';

/** Gives pages of the art as forms in one target file. */
export interface FormMaker {
  /**
   * The form of a page: what lies within `box` of the page turned counter-clockwise by `rotate`, its head up, the
   * lower left of the box at the origin, in pt. The same page, turn and box always give the same form; the pages of a
   * file share what they have in common.
   *
   * Refusals: `art-page-missing`, `art-damaged`, `art-too-large`. After one, the target holds half of a page and is
   * not to be saved.
   */
  formOf(art: OpenArt, page: number, rotate: Head, box: Rect<'art'>): Result<PDFRef>;
  /**
   * Writes what belongs to the file as a whole, its layers and its output intent, once all forms are made. Gives
   * what the person should know, in words.
   */
  finish(): readonly string[];
}

interface Source extends PlacedArt {
  readonly forms: Map<string, PDFRef>;
}

/** A maker of forms in `target`. Nothing in the art is changed. */
export function createFormMaker(target: PDFDocument): FormMaker {
  const sources = new Map<OpenArt, Source>();
  const notices = new Set<string>();

  const sourceOf = (art: OpenArt): Source => {
    const known = sources.get(art);
    if (known !== undefined) return known;
    for (const notice of art.notices) notices.add(notice);
    const source: Source = { art, copier: createCopier(art, target.context), forms: new Map() };
    sources.set(art, source);
    return source;
  };

  return {
    formOf: (art, page, rotate, box) => {
      const source = sourceOf(art);
      const key = [page, rotate, box.x, box.y, box.w, box.h].join(' ');
      const known = source.forms.get(key);
      if (known !== undefined) return ok(known);
      const made = makePageForm(target.context, source, page, rotate, box);
      if (!made.ok) return made;
      for (const notice of made.value.notices) notices.add(notice);
      source.forms.set(key, made.value.form);
      return ok(made.value.form);
    },
    finish: () => {
      const placed = [...sources.values()];
      for (const notice of carryIntents(target, placed)) notices.add(notice);
      attachLayers(target, placed);
      return [...notices];
    },
  };
}
