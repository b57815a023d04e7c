import { useEffect, useState } from 'preact/hooks';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { toneNames } from '../../ui/sound/tone-plans.ts';
import { vibrate } from '../../ui/sound/vibrate.ts';
import { soundWords as words } from '../../words/sound-words.ts';
import { spokenSample } from '../../words/spoken-words.ts';
import { useApp } from '../parts/app-context.ts';
import { countSpeaker, hasVoice, onVoices } from '../parts/count-speaker.ts';
import { windowPlayer } from '../parts/use-feedback.ts';
import { OnOff } from './on-off.tsx';

/** What this tablet lets be heard: the sounds, each to be tried, and the spoken count. */
export const SoundPanel = () => {
  const { preferences } = useApp();
  const { sound, speak } = preferences;
  const voice = useVoice();
  return (
    <Panel title={words.title} lead={words.lead}>
      <OnOff
        label={words.sound}
        on={sound.value}
        onChange={(on) => {
          sound.value = on;
        }}
        testId="sound"
      />
      <p class="field-label">{words.tryThem}</p>
      <ul class="set-up-rack" aria-label={words.tryThem}>
        {toneNames.map((name) => (
          <li key={name}>
            <PressButton
              tone="quiet"
              label={words.tones[name]}
              name={words.hear(words.tones[name])}
              onAct={() => {
                windowPlayer().play(name, performance.now());
                vibrate(name);
              }}
              testId={`hear-${name}`}
            />
          </li>
        ))}
      </ul>
      <OnOff
        label={words.speak}
        hint={voice ? words.speakHint : undefined}
        error={voice ? undefined : words.noVoice}
        on={speak.value && voice}
        onChange={(on) => {
          speak.value = on && voice;
        }}
        testId="speak"
      />
      {voice && (
        <div>
          <PressButton
            tone="quiet"
            label={words.hearCount}
            onAct={() => countSpeaker.say(spokenSample, 0)}
            testId="hear-count"
          />
        </div>
      )}
    </Panel>
  );
};

/** Whether the device has a voice of its own; some browsers say so only a moment later. */
function useVoice(): boolean {
  const [voice, setVoice] = useState(hasVoice);
  useEffect(() => onVoices(() => setVoice(hasVoice())), []);
  return voice;
}
