// Pages of art placed by the real form maker, each on a page of its own that is just its box.
import { PDFDocument, PDFName } from 'pdf-lib';
import type { Head } from '../../shared/geometry/head.ts';
import type { Rect } from '../../shared/geometry/space.ts';
import { type OpenArt, type OpenOptions, openArt } from '../../shared/pdf/art/openArt.ts';
import { createFormMaker } from '../../shared/pdf/form/formMaker.ts';

/** One placing: by default the whole first page as it is viewed. */
export interface Placing {
  readonly art: OpenArt;
  readonly page?: number;
  readonly rotate?: Head;
  readonly box?: Rect<'art'>;
}

/** Opens art that is known to open. */
export async function opened(bytes: Uint8Array, options?: OpenOptions): Promise<OpenArt> {
  const art = await openArt(bytes, options);
  if (!art.ok) throw new Error(art.fault.message);
  return art.value;
}

/** The file that the placings give, and what was said of them. Throws for a refusal. */
export async function placed(
  ...placings: readonly Placing[]
): Promise<{ bytes: Uint8Array; notices: readonly string[] }> {
  const target = await PDFDocument.create({ updateMetadata: false });
  const maker = createFormMaker(target);
  for (const { art, page = 1, rotate = 0, box } of placings) {
    const read = art.page(page);
    if (!read.ok) throw new Error(read.fault.message);
    const cut = box ?? read.value.boxes.media;
    const form = maker.formOf(art, page, rotate, cut);
    if (!form.ok) throw new Error(form.fault.message);
    const { node } = target.addPage([cut.w, cut.h]);
    node.set(PDFName.of('Resources'), target.context.obj({ XObject: { Face: form.value } }));
    node.set(PDFName.of('Contents'), target.context.register(target.context.stream('/Face Do')));
  }
  const notices = maker.finish();
  return { bytes: await target.save({ useObjectStreams: false }), notices };
}
