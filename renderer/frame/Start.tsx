// The start: drop art, begin or open a job, or go on with one of the last.
import { Button as AriaButton } from 'react-aria-components';
import { Button } from '../controls/Button.tsx';
import { addArt } from '../desk/addArt.ts';
import { openBrief, openJob } from '../desk/opening.ts';
import { showDayAndTime } from '../desk/showDate.ts';
import { startNewBrief } from '../desk/startBrief.ts';
import { host } from '../hostClient/host.ts';
import { app, useApp } from '../state/store.ts';

export function Start() {
  const recents = useApp((s) => s.recents);
  const kept = useApp((s) => s.kept);
  return (
    <section className="start" aria-label="Start">
      <div className="welcome">
        <h2>Drop the PDFs of a job here</h2>
        <p className="soft">
          One file with front and back, or a file for each. Sizes and faces are read from the pages, and you
          are asked only what they leave open.
        </p>
        <div className="beginnings">
          <Button kind="main" onPress={() => void addArt()}>
            Choose PDFs…
          </Button>
          <Button onPress={() => void startNewBrief()}>New job…</Button>
          <Button onPress={() => void openJob()}>Open a job…</Button>
          <Button onPress={() => void openBrief()}>Lay out a brief file…</Button>
        </div>
        {kept.length > 0 && (
          <Button kind="quiet" onPress={() => app.getState().openDialog({ is: 'left-behind' })}>
            {kept.length === 1 ? 'One job was left unsaved' : `${kept.length} jobs were left unsaved`}
          </Button>
        )}
      </div>
      {recents.length > 0 && (
        <section className="recents" aria-label="Last jobs">
          <h2>Last jobs</h2>
          <ul>
            {recents.map((recent) => (
              <li key={recent.file}>
                <AriaButton
                  className="recent"
                  isDisabled={!recent.there}
                  onPress={() => void openJob(recent)}
                >
                  <span className="recent-title">{recent.title}</span>
                  <span className="soft">
                    {recent.there
                      ? `${recent.place}/${recent.name}`
                      : `no longer at ${recent.place}/${recent.name}`}
                  </span>
                  <span className="soft recent-when">{showDayAndTime(recent.at)}</span>
                </AriaButton>
                <Button
                  kind="quiet"
                  label={`Take ${recent.title} off this list`}
                  onPress={() =>
                    void host.recents
                      .forget({ file: recent.file })
                      .then((left) => app.setState({ recents: left }))
                  }
                >
                  Forget
                </Button>
              </li>
            ))}
          </ul>
        </section>
      )}
    </section>
  );
}
