import { useState } from 'preact/hooks';
import { ChoiceRow } from '../../../src/ui/field/choice-row.tsx';
import { Field } from '../../../src/ui/field/field.tsx';
import { SelectField } from '../../../src/ui/field/select-field.tsx';
import { grainTones } from '../../../src/ui/flow/grain-patterns.ts';
import { GrainSwatch } from '../../../src/ui/flow/grain-swatch.tsx';
import { Disclosure } from '../../../src/ui/notice/disclosure.tsx';
import { EmptyState } from '../../../src/ui/notice/empty-state.tsx';
import { Notice } from '../../../src/ui/notice/notice.tsx';
import { Panel } from '../../../src/ui/panel/panel.tsx';
import { PressButton } from '../../../src/ui/press/press-button.tsx';
import { Sheet } from '../../../src/ui/sheet/sheet.tsx';

type Wood = 'ash' | 'yew' | 'plum';

const Fields = () => {
  const [name, setName] = useState('Spring fair');
  const [bore, setBore] = useState('6,15x');
  const [note, setNote] = useState('A note that is somewhat too long.');
  const [wood, setWood] = useState<Wood>('yew');
  return (
    <>
      <Field label="Batch" value={name} onText={setName} hint="As you call it at the bench." />
      <Field
        label="Bore"
        value={bore}
        onText={setBore}
        kind="number"
        unit="mm"
        error="“6,15x” is no number. It is kept; mend it here."
      />
      <Field
        label="Note"
        optional="(may stay empty)"
        rows={2}
        value={note}
        onText={setNote}
        longest={20}
        tooLong={(length) => `${length} signs; the label holds 20.`}
      />
      <Field label="Due" value="2027-04-02" onText={() => undefined} kind="date" />
      <SelectField
        label="Ferrule"
        options={[
          { value: 'copper', label: 'Copper' },
          { value: 'nickel-silver', label: 'Nickel silver' },
        ]}
        value="copper"
        onChoose={() => undefined}
      />
      <ChoiceRow<Wood>
        label="Wood"
        value={wood}
        onChoose={setWood}
        choices={[
          { value: 'ash', label: 'Ash', mark: <GrainSwatch pattern="ring-porous" tones={grainTones.pale} /> },
          {
            value: 'yew',
            label: 'Yew',
            detail: 'toxic dust',
            mark: <GrainSwatch pattern="straight" tones={grainTones.red} />,
          },
          { value: 'plum', label: 'Plum', mark: <GrainSwatch pattern="curl" tones={grainTones.brown} /> },
        ]}
      />
    </>
  );
};

/** Fields, choices and messages. */
export const FormsPage = () => (
  <main class="gallery">
    <h1>Forms and messages</h1>
    <Panel
      title="A batch"
      lead="What is wanted, by when."
      actions={<PressButton label="Save" tone="go" icon="check" onAct={() => undefined} />}
    >
      <Fields />
    </Panel>
    <Notice tone="info" title="A newer version is ready">
      It starts when nobody is mid-tray.
    </Notice>
    <Notice
      tone="warn"
      title="Last backup 4 days ago"
      actions={<PressButton label="Back up" icon="export" onAct={() => undefined} />}
    />
    <Notice tone="error" title="The clock jumped back 2 hours">
      Taps are kept in order. Set the clock.
    </Notice>
    <Notice tone="saved" title="Backup written: 1,204 entries" />
    <Disclosure summary="How this is worked out" open>
      <p>Good ones of all that left the stage, seconds included.</p>
    </Disclosure>
    <Disclosure summary="More of the same">
      <p>Hidden.</p>
    </Disclosure>
    <EmptyState
      icon="trays"
      title="No trays yet"
      action={<PressButton label="Make a tray" tone="go" icon="plus" onAct={() => undefined} />}
    >
      Make up a tray from the stores, and it stands here.
    </EmptyState>
  </main>
);

/** A sheet laid over a page. */
export const SheetPage = () => {
  const [open, setOpen] = useState(true);
  return (
    <main class="gallery">
      <h1>Under the sheet</h1>
      <PressButton label="Open" testId="open" onAct={() => setOpen(true)} />
      {open && (
        <Sheet
          title="A new batch"
          closeLabel="Close"
          onClose={() => setOpen(false)}
          testId="sheet"
          foot={<PressButton label="Save" tone="go" icon="check" onAct={() => undefined} />}
        >
          <Fields />
        </Sheet>
      )}
    </main>
  );
};
