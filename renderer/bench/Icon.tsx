// Small drawings for the buttons of the bench, all on one grid of 20 by 20.
import type { ActionName } from '../../shared/contract/actions.ts';

const DRAWN: Readonly<Partial<Record<ActionName, string>>> = {
  'turn-left': 'M6 8.5h8v8H6zM10 5.5a5 5 0 0 0-6 2.5M4 4v4h4',
  'turn-right': 'M6 8.5h8v8H6zM10 5.5a5 5 0 0 1 6 2.5M16 4v4h-4',
  'swap-faces': 'M3 5h7v10H3zM12 5h5v10h-5M7 2.5h6l-2-1.5M13 17.5H7l2 1.5',
  duplicate: 'M4 4h9v9H4zM7 13v3.5h9.5V7H13',
  remove: 'M5 5l10 10M15 5 5 15',
  'align-left': 'M3 2v16M5.5 5h11v4h-11zM5.5 11.5h6v4h-6z',
  'align-middle-across': 'M10 2v3M10 9v2.5M10 15.5V18M4 5h12v4H4zM6.5 11.5h7v4h-7z',
  'align-right': 'M17 2v16M3.5 5h11v4h-11zM8.5 11.5h6v4h-6z',
  'align-lead': 'M2 3h16M5 5.5h4v11H5zM11.5 5.5h4v6h-4z',
  'align-middle-along': 'M2 10h3M9 10h2.5M15.5 10H18M5 4h4v12H5zM11.5 6.5h4v7h-4z',
  'align-tail': 'M2 17h16M5 3.5h4v11H5zM11.5 8.5h4v6h-4z',
  'distribute-across': 'M2.5 3v14M17.5 3v14M7.5 6h5v8h-5z',
  'distribute-along': 'M3 2.5h14M3 17.5h14M6 7.5h8v5H6z',
  'step-and-repeat': 'M3 3h5v5H3zM12 3h5v5h-5zM3 12h5v5H3zM12 12h5v5h-5z',
  'lay-out': 'M3 3h14v14H3zM3 10h14M10 3v14',
  'zoom-in': 'M10 4v12M4 10h12',
  'zoom-out': 'M4 10h12',
  'zoom-fit': 'M3 7V3h4M13 3h4v4M17 13v4h-4M7 17H3v-4',
};

export function Icon({ name }: { readonly name: ActionName }) {
  return (
    <svg viewBox="0 0 20 20" aria-hidden="true">
      <path d={DRAWN[name] ?? ''} />
    </svg>
  );
}
