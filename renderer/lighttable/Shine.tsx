// How far the other side shines through.
import { Label, Slider, SliderThumb, SliderTrack } from 'react-aria-components';

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
      <Slider
        className="shine"
        value={through}
        onChange={onChange}
        minValue={0}
        maxValue={1}
        step={0.01}
        formatOptions={{ style: 'percent' }}
      >
        <Label>The other side shines through</Label>
        <SliderTrack className="track">
          <SliderThumb className="thumb" />
        </SliderTrack>
      </Slider>
      <div className="ends soft">
        <span>Side 1 only</span>
        <span>Both</span>
        <span>Side 2 only</span>
      </div>
    </section>
  );
}
