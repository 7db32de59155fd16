// The rulers beside the held piece, at true size.
import type { Rect } from '../../shared/geometry/space.ts';
import { POINTS_PER, type Unit } from '../../shared/units/length.ts';

/** How thick they are, in px. */
const RULER_PX = 26;

/** The strokes of a ruler: so many parts of the unit, numbered every so often. */
const PARTS: Readonly<Record<Unit, readonly [each: number, numbered: number]>> = {
  in: [1 / 8, 8],
  mm: [1, 10],
  pt: [6, 12],
};

export function HandRulers({
  lying,
  zoom,
  unit,
}: {
  readonly lying: Rect<'screen'>;
  /** Px to the pt. */
  readonly zoom: number;
  readonly unit: Unit;
}) {
  const { x, y, w, h } = lying;
  return (
    <>
      <Ruler length={w} zoom={zoom} unit={unit} place={{ left: x, top: y + h + 10 }} along="x" />
      <Ruler length={h} zoom={zoom} unit={unit} place={{ left: x - RULER_PX - 10, top: y }} along="y" />
    </>
  );
}

function Ruler({
  length,
  zoom,
  unit,
  place,
  along,
}: {
  readonly length: number;
  readonly zoom: number;
  readonly unit: Unit;
  readonly place: { readonly left: number; readonly top: number };
  readonly along: 'x' | 'y';
}) {
  const [each, numbered] = PARTS[unit];
  const step = POINTS_PER[unit] * each * zoom;
  const strokes = Array.from({ length: Math.floor(length / step + 0.001) + 1 }, (_, n) => n);
  const across = along === 'x';
  const depth = (n: number) => (n % numbered === 0 ? 12 : n % (numbered / 2) === 0 ? 8 : 5);
  // Along the side the ruler counts from the foot of the piece.
  const at = (n: number) => (across ? n * step : length - n * step);
  const path = strokes
    .map((n) => (across ? `M${at(n)} 0v${depth(n)}` : `M${RULER_PX} ${at(n)}h${-depth(n)}`))
    .join('');
  return (
    <svg
      className="hand-ruler"
      style={{ ...place, width: across ? length + 1 : RULER_PX, height: across ? RULER_PX : length + 1 }}
      aria-hidden="true"
    >
      <path d={path} />
      {strokes
        .filter((n) => n % numbered === 0 && n > 0)
        .map((n) => (
          <text
            key={n}
            x={across ? at(n) - 3 : 10}
            y={across ? 23 : at(n) + 12}
            textAnchor={across ? 'end' : 'middle'}
          >
            {Math.round(n * each)}
          </text>
        ))}
    </svg>
  );
}
