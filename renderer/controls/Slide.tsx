// A slider with its name, and what it stands at in words where numbers would not say it.
import { Label, Slider, type SliderProps, SliderThumb, SliderTrack } from 'react-aria-components';
import './controls.css';

interface SlideProps extends Pick<SliderProps<number>, 'minValue' | 'maxValue' | 'step' | 'formatOptions'> {
  readonly label: string;
  readonly value: number;
  readonly onChange: (value: number) => void;
  /** What it stands at. */
  readonly says?: string;
}

export function Slide({ label, says, ...slider }: SlideProps) {
  return (
    <Slider className="slide" {...slider}>
      <Label>{label}</Label>
      {says !== undefined && <output className="slide-says">{says}</output>}
      <SliderTrack className="track">
        <SliderThumb className="thumb" />
      </SliderTrack>
    </Slider>
  );
}
