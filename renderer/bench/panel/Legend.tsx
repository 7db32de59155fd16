// What the lines on the sheet mean.
const LINES = [
  { name: 'Trim', dash: undefined },
  { name: 'Bleed', dash: '1 3' },
  { name: 'Safe margin', dash: '6 5' },
  { name: 'Axis of the turn', dash: '14 4 2 4' },
] as const;

export function Legend() {
  return (
    <section className="block" aria-label="Lines on the sheet">
      <h2>Lines on the sheet</h2>
      <ul className="legend">
        {LINES.map(({ name, dash }) => (
          <li key={name}>
            <svg viewBox="0 0 40 12" aria-hidden="true">
              <path d="M0 6h40" {...(dash === undefined ? {} : { strokeDasharray: dash })} />
            </svg>
            {name}
          </li>
        ))}
        <li>
          <svg viewBox="0 0 40 12" aria-hidden="true">
            <path d="M-6 12 6 0M1 12 13 0M8 12 20 0M15 12 27 0M22 12 34 0M29 12 41 0M36 12 48 0" />
          </svg>
          Cannot be printed
        </li>
        <li>
          <svg viewBox="0 0 40 12" aria-hidden="true">
            <path d="M14 11h12l-6-9z" className="filled" />
          </svg>
          Head of a piece
        </li>
      </ul>
    </section>
  );
}
