// What is proposed from art, put into the draft: pieces are written anew with each answer, what was typed of them stays.
import type { Art } from '../../shared/contract/art.ts';
import type { ArtHandle } from '../../shared/contract/handles.ts';
import { type IntakeQuestion, type ProposedPiece, proposePieces } from '../../shared/intake/proposePieces.ts';
import { type BriefDraft, type DraftFace, type DraftPiece, sizeTyped, USUAL } from '../draft/briefDraft.ts';
import type { Drafting } from '../state/draftState.ts';

/** What the art that pieces are proposed from leaves open. */
export function questionsOf({ proposedFrom, draft, answers }: Drafting): readonly IntakeQuestion[] {
  return proposePieces(proposedFrom, draft.units, answers).questions;
}

/** The draft with its proposed pieces as the answers now have them. */
export function propose(drafting: Drafting): Drafting {
  const { proposedFrom, answers, draft } = drafting;
  const { pieces } = proposePieces(proposedFrom, draft.units, answers);
  const proposed = pieces.map((piece) => draftPiece(piece, draft));
  const kept = draft.pieces.filter((p) => !p.key.startsWith(PROPOSED));
  const all = [...kept, ...proposed];
  const [first] = proposed;
  return {
    ...drafting,
    draft: {
      ...draft,
      title: draft.title === '' ? (first?.name ?? '') : draft.title,
      style: drafting.changes ? draft.style : styleFor(draft, all),
      pieces: all,
    },
  };
}

/** The draft with what was found in a file since its pieces were proposed. */
export function withArtChecked(drafting: Drafting, checked: Art): Drafting {
  const now = (arts: readonly Art[]) => arts.map((one) => (one.art === checked.art ? checked : one));
  return { ...drafting, art: now(drafting.art), proposedFrom: now(drafting.proposedFrom) };
}

/** The draft without a file that cannot be used after all, and without the pieces that were proposed from it. */
export function withoutArt(drafting: Drafting, art: ArtHandle): Drafting {
  const rest = (arts: readonly Art[]) => arts.filter((one) => one.art !== art);
  return propose({ ...drafting, art: rest(drafting.art), proposedFrom: rest(drafting.proposedFrom) });
}

const PROPOSED = 'proposed ';

/** Without any back there is one side to print. */
function styleFor(draft: BriefDraft, pieces: readonly DraftPiece[]): BriefDraft['style'] {
  if (pieces.every((p) => p.back === undefined)) return 'simplex';
  return draft.style === 'simplex' ? 'work-and-turn' : draft.style;
}

function draftPiece(piece: ProposedPiece, draft: BriefDraft): DraftPiece {
  const key = `${PROPOSED}${piece.front.art} ${piece.front.page}`;
  const before = draft.pieces.find((p) => p.key === key);
  return {
    key,
    name: piece.name,
    trim: sizeTyped(piece.trim),
    bleed: piece.bleed.typed,
    safe: before?.safe ?? USUAL[draft.units].safe,
    turned: before?.turned ?? 'head-to-head',
    lies: before?.lies ?? 'either',
    quantity: before?.quantity ?? '',
    front: faceOf(piece.front),
    back: piece.back && faceOf(piece.back),
  };
}

function faceOf({ art, page }: ProposedPiece['front']): DraftFace {
  return { art: art as ArtHandle, page, rotate: 0 };
}
