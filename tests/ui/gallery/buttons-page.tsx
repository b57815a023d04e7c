import { Icon } from '../../../src/ui/icon/icon.tsx';
import { type IconName, iconPaths } from '../../../src/ui/icon/icon-paths.ts';
import { lateIcons } from '../../../src/ui/icon/late-icons.ts';
import { Panel } from '../../../src/ui/panel/panel.tsx';
import { PressButton, type PressTone } from '../../../src/ui/press/press-button.tsx';

const tones: readonly PressTone[] = ['plain', 'go', 'flaw', 'quiet', 'danger'];
const nothing = () => undefined;

/** Every tone, size and state of the button, and all marks. */
export const ButtonsPage = () => (
  <main class="gallery">
    <h1>Buttons and marks</h1>
    <Panel title="Normal" lead="At least 56 px each way, everywhere in the app.">
      <div class="gallery-row">
        {tones.map((tone) => (
          <PressButton key={tone} label={`Save ${tone}`} tone={tone} icon="check" onAct={nothing} />
        ))}
      </div>
      <div class="gallery-row">
        <PressButton label="Chosen" selected onAct={nothing} />
        <PressButton label="Not chosen" selected={false} onAct={nothing} />
        <PressButton label="Split" disabledReason="Only 1 piece here" icon="split" onAct={nothing} />
        <PressButton label="With key" keyHint="F9" onAct={nothing} />
        <PressButton label="Held" testId="held" onAct={nothing} />
        <PressButton label="Held go" tone="go" testId="held-go" onAct={nothing} />
      </div>
    </Panel>
    <Panel title="Bench, small" lead="96 px.">
      <div class="gallery-row">
        {tones.map((tone) => (
          <PressButton
            key={tone}
            size="bench-small"
            label="Recount"
            tone={tone}
            icon="recount"
            onAct={nothing}
          />
        ))}
        <PressButton size="bench-small" label="Pause" icon="pause" keyHint="0" onAct={nothing} />
        <PressButton size="bench-small" label="Ash" selected onAct={nothing} />
        <PressButton size="bench-small" label="Join" disabledReason="Other wood" onAct={nothing} />
      </div>
    </Panel>
    <Panel title="Bench" lead="132 px.">
      <div class="gallery-row">
        {tones.map((tone, index) => (
          <PressButton
            key={tone}
            size="bench"
            label={tone === 'flaw' ? 'Tear-out' : 'Pass'}
            tone={tone}
            icon={tone === 'flaw' ? 'flaw' : 'pass'}
            keyHint={String(index + 1)}
            onAct={nothing}
          />
        ))}
        <PressButton size="bench" label="Undo" icon="undo" keyHint="⌫" onAct={nothing} />
        <PressButton size="bench" label="Next" detail="11 left" keyHint="PageDown" onAct={nothing} />
        <PressButton size="bench" label="Scratch" tone="flaw" selected onAct={nothing} />
        <PressButton size="bench" label="Pass" disabledReason="None left here" onAct={nothing} />
      </div>
    </Panel>
    <Panel title="Marks">
      <div class="gallery-row">
        {Object.keys({ ...iconPaths, ...lateIcons }).map((name) => (
          <span class="gallery-icon" key={name}>
            <Icon name={name as IconName} size={48} />
            {name}
          </span>
        ))}
      </div>
    </Panel>
  </main>
);
