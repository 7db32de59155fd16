// Mending what the light table found: by an edit that can be undone, or by going to the bench.
import { artOf } from '../../shared/contract/handles.ts';
import { headOf } from '../../shared/geometry/head.ts';
import { trimOf } from '../../shared/job/job.ts';
import { designNamed } from '../../shared/layout/forms.ts';
import type { FaceName } from '../../shared/layout/position.ts';
import { points } from '../../shared/units/length.ts';
import { host } from '../hostClient/host.ts';
import { app } from '../state/store.ts';
import type { Mend } from './lightFaults.ts';

export async function mend(how: Mend): Promise<void> {
  const { select, takeInHand, goTo } = app.getState();
  switch (how.do) {
    case 'show-on-bench':
      select(how.positions);
      takeInHand(undefined);
      goTo('bench');
      return;
    case 'turn-art':
      return turnArt(how.piece, how.face);
  }
}

/** Turns the page of a face half round; its trim is found anew on the turned page. */
async function turnArt(pieceName: string, faceName: FaceName): Promise<void> {
  const { history, perform, report } = app.getState();
  if (history === undefined) return;
  const piece = designNamed(history.present.brief.pieces, pieceName);
  const face = piece[faceName];
  if (face === undefined) return;
  const found = await host.art.findTrim({
    art: artOf(face),
    page: face.page,
    trim: trimOf(piece),
    bleed: points(piece.bleed),
    rotate: headOf(face.rotate + 180),
  });
  if (!found.ok) return report(found.fault);
  const { trim, said } = found.value;
  perform({ do: 'turn-art', piece: pieceName, face: faceName, found: { trim, said } });
}
