// What is chosen in the library, with its fields.
import { learnFromReadings } from '../../shared/library/learnFromReadings.ts';
import { addReading } from './draft/addReading.ts';
import type { LibraryDraft } from './draft/draft.ts';
import type { Editing } from './editing.ts';
import type { Editor } from './editor.ts';
import { listIn, propsOf } from './entryProps.ts';
import { PaperFields } from './paper/PaperFields.tsx';
import type { InkLearning } from './printer/InkPart.tsx';
import { PrinterForm } from './printer/PrinterForm.tsx';
import { RatesForm } from './RatesForm.tsx';

interface EntryShownProps {
  readonly editor: Editor;
  readonly editing: Editing;
}

export function LibraryEntryForm({ editor, editing }: EntryShownProps) {
  const { typed, chosen, wrongs } = editing;
  const { printers, papers, currency, units } = typed;
  const props = {
    wrongs,
    type: (changed: Partial<LibraryDraft>) => editor.type({ ...typed, ...changed }),
    take: (changed: Partial<LibraryDraft>) => editor.take({ ...typed, ...changed }),
  };
  switch (chosen.is) {
    case 'rates':
      return (
        <section className="entry" aria-label="Rates and units">
          <RatesForm value={typed} {...props} />
        </section>
      );
    case 'printer': {
      const printer = printers.find(({ key }) => key === chosen.key);
      if (printer === undefined) return null;
      const list = listIn(props, 'printers', printers, (changed) => ({ printers: changed }));
      return (
        <section className="entry" key={chosen.key} aria-label={`Printer: ${printer.name}`}>
          <PrinterForm
            {...propsOf(list, printer)}
            currency={currency}
            learning={learningOf(editor, editing, chosen.key)}
          />
        </section>
      );
    }
    case 'paper': {
      const paper = papers.find(({ key }) => key === chosen.key);
      if (paper === undefined) return null;
      const list = listIn(props, 'papers', papers, (changed) => ({ papers: changed }));
      return (
        <section className="entry" key={chosen.key} aria-label={`Paper: ${paper.name}`}>
          <PaperFields {...propsOf(list, paper)} currency={currency} units={units} />
        </section>
      );
    }
  }
}

/** What is known of the ink of the printer with this key, as it was last taken. */
function learningOf(editor: Editor, { kept, started }: Editing, key: string): InkLearning {
  const ink = kept.library.printers[kept.draft.printers.findIndex((printer) => printer.key === key)]?.ink;
  return {
    model: ink?.model,
    says: ink && learnFromReadings(ink).says,
    started: started[key],
    write: (reading) => editor.write(key, reading),
    add: (reading) => {
      const { draft, wrongs } = addReading(editor.state.getState().editing.typed, key, reading);
      if (Object.keys(wrongs).length === 0) editor.take(draft);
      return wrongs;
    },
  };
}
