import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { themeNames } from '../../ui/theme/theme-name.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useApp } from '../parts/app-context.ts';
import { OnOff } from './on-off.tsx';
import { WhoTaps } from './who-taps.tsx';

/** Who taps here, how the tablet looks and whether it sounds: kept on this tablet alone. */
export const LooksPanel = () => {
  const { preferences } = useApp();
  return (
    <Panel title={words.looks} lead={words.looksLead}>
      <WhoTaps />
      <ChoiceRow
        label={words.theme}
        choices={themeNames.map((value) => ({ value, label: words.themes[value] }))}
        value={preferences.theme.value}
        onChoose={(value) => {
          preferences.theme.value = value;
        }}
        testId="theme"
      />
      <OnOff
        label={words.sound}
        on={preferences.sound.value}
        onChange={(on) => {
          preferences.sound.value = on;
        }}
        testId="sound"
      />
    </Panel>
  );
};
