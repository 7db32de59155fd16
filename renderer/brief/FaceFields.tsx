// Which page a face is printed from, and how far that page is turned to bring its head up.
import type { Art } from '../../shared/contract/art.ts';
import { HEADS, type Head } from '../../shared/geometry/head.ts';
import { type Option, Select } from '../controls/Choice.tsx';
import type { DraftFace } from '../draft/briefDraft.ts';

interface FaceFieldsProps {
  readonly label: string;
  readonly face: DraftFace | undefined;
  readonly art: readonly Art[];
  /** Whether it may be left unprinted. */
  readonly optional?: boolean;
  readonly wrong: string | undefined;
  readonly onChange: (face: DraftFace | undefined) => void;
}

const NONE = 'none';

export function FaceFields({ label, face, art, optional = false, wrong, onChange }: FaceFieldsProps) {
  const pages = art.flatMap((a) =>
    a.pages.map((page) => ({ value: `${a.art} ${page.number}`, label: pageInWords(a, page.number) })),
  );
  const options: readonly Option<string>[] = optional
    ? [{ value: NONE, label: 'not printed' }, ...pages]
    : pages;
  const value = face === undefined ? (optional ? NONE : undefined) : `${face.art} ${face.page}`;
  const choose = (chosen: string) => {
    const found = art
      .flatMap((a) => a.pages.map((p) => ({ art: a.art, page: p.number })))
      .find((p) => `${p.art} ${p.page}` === chosen);
    onChange(found && { ...found, rotate: face?.rotate ?? 0 });
  };
  return (
    <div className="face-fields">
      <Select label={label} value={value} options={options} onChange={choose} />
      {face !== undefined && (
        <Select
          label={`${label}: its page is turned`}
          value={String(face.rotate)}
          options={HEADS.map((head) => ({ value: String(head), label: TURNS[head] }))}
          onChange={(turned) => onChange({ ...face, rotate: Number(turned) as Head, trimAt: undefined })}
        />
      )}
      {wrong !== undefined && (
        <p className="face-wrong">
          {label}: {wrong}
        </p>
      )}
    </div>
  );
}

const TURNS: Readonly<Record<Head, string>> = {
  0: 'not at all',
  90: 'a quarter left',
  180: 'half round',
  270: 'a quarter right',
};

function pageInWords(art: Art, page: number): string {
  return art.pages.length === 1 ? art.name : `${art.name}, page ${page}`;
}
