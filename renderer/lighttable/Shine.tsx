// How far the other side shines through.
import { Slide } from '../controls/Slide.tsx';

export function Shine({
  through,
  onChange,
}: {
  readonly through: number;
  readonly onChange: (through: number) => void;
}) {
  return (
    <section className="block" aria-label="Light">
      <h2>Light</h2>
      <Slide
        label="The other side shines through"
        value={through}
        onChange={onChange}
        minValue={0}
        maxValue={1}
        step={0.01}
        formatOptions={{ style: 'percent' }}
      />
      <div className="ends soft">
        <span>Side 1 only</span>
        <span>Both</span>
        <span>Side 2 only</span>
      </div>
    </section>
  );
}
