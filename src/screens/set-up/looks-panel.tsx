import { chooseLanguage } from '../../app/language-choice.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { themeNames } from '../../ui/theme/theme-name.ts';
import { language, languageTags, mirrored } from '../../words/locale.ts';
import { languageNames } from '../../words/other-language.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useApp } from '../parts/app-context.ts';
import { WhoTaps } from './who-taps.tsx';
import { WholeScreen } from './whole-screen.tsx';

/** Who taps here, how the tablet looks and for which hand: kept on this tablet alone. */
export const LooksPanel = () => {
  const { preferences } = useApp();
  return (
    <Panel title={words.looks} lead={words.looksLead}>
      <WhoTaps />
      <ChoiceRow
        label={words.language}
        hint={words.languageHint}
        choices={languageTags.map((value) => ({ value, label: languageNames[value] }))}
        value={language === mirrored ? 'en' : language}
        onChoose={chooseLanguage}
        testId="language"
      />
      <ChoiceRow
        label={words.theme}
        choices={themeNames.map((value) => ({ value, label: words.themes[value] }))}
        value={preferences.theme.value}
        onChoose={(value) => {
          preferences.theme.value = value;
        }}
        testId="theme"
      />
      <ChoiceRow
        label={words.side}
        hint={words.sideHint}
        choices={(['left', 'right'] as const).map((value) => ({ value, label: words.sides[value] }))}
        value={preferences.side.value}
        onChoose={(value) => {
          preferences.side.value = value;
        }}
        testId="side"
      />
      <WholeScreen />
    </Panel>
  );
};
