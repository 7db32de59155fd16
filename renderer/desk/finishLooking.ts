// What is found in taken-in art after its pieces have been proposed: noted in the draft, or the art is taken out of it.
import type { Art } from '../../shared/contract/art.ts';
import { host } from '../hostClient/host.ts';
import { app } from '../state/store.ts';
import { withArtChecked, withoutArt } from './propose.ts';

/** Waits until the file has been looked through to the end. */
export async function finishLooking({ art, checked }: Art): Promise<void> {
  if (checked) return;
  const looked = await host.art.look({ art });
  const { drafting, draftThis, report } = app.getState();
  // A draft that was put away, or laid out meanwhile, waits for nothing any more.
  if (drafting === undefined || drafting.art.every((known) => known.art !== art)) return;
  if (looked.ok) return draftThis(withArtChecked(drafting, looked.value));
  report(looked.fault);
  draftThis(withoutArt(drafting, art));
}
