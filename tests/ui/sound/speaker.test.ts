import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { openSpeaker, type Speech, voiceOnDevice } from '../../../src/ui/sound/speaker.ts';

interface Voice {
  readonly name: string;
  readonly lang: string;
  readonly localService: boolean;
  readonly default: boolean;
}
const voice = (name: string, lang: string, more: Partial<Voice> = {}): Voice => ({
  ...{ name, lang, localService: true, default: false },
  ...more,
});

/** A platform that writes down what it is asked to say. */
const platform = (...voices: readonly Voice[]) => {
  const said: string[] = [];
  const speech: Speech = {
    getVoices: () => voices.map((each) => ({ ...each, voiceURI: each.name })),
    speak: ({ text, voice: by, lang }) => said.push(`${by?.name} (${lang}): ${text}`),
    cancel: () => said.push('cut'),
  };
  return { speech, said };
};

beforeEach(() => {
  vi.useFakeTimers();
  class Utterance {
    voice = null;
    lang = '';
    readonly text: string;
    constructor(text: string) {
      this.text = text;
    }
  }
  Object.assign(globalThis, { SpeechSynthesisUtterance: Utterance });
});
afterEach(() => {
  vi.useRealTimers();
  Reflect.deleteProperty(globalThis, 'SpeechSynthesisUtterance');
});

describe('the voice', () => {
  test.each<[string, readonly Voice[], string | undefined]>([
    [
      'is one that is on the device',
      [voice('far', 'en-US', { localService: false }), voice('near', 'en-GB')],
      'near',
    ],
    [
      'is none when all of them need a network',
      [voice('far', 'en-GB', { localService: false, default: true })],
      undefined,
    ],
    [
      'is none when none speaks the language',
      [voice('near', 'fr-FR', { default: true }), voice('odd', 'enm')],
      undefined,
    ],
    [
      'is the platform’s own choice among several',
      [voice('one', 'en-GB'), voice('two', 'en-US', { default: true })],
      'two',
    ],
    ['may be named in the way of Android', [voice('near', 'en_GB')], 'near'],
    ['is none on a bare machine', [], undefined],
  ])('%s', (_, voices, name) => {
    expect(voiceOnDevice(platform(...voices).speech, 'en')?.name).toBe(name);
  });
});

describe('a count', () => {
  const near = voice('near', 'en-GB');

  test('is said after its sound, in the language of the voice', () => {
    const { speech, said } = platform(near);
    openSpeaker(speech, 'en').say('21, 3 left', 320);
    vi.advanceTimersByTime(319);
    expect(said).toEqual(['cut']);
    vi.advanceTimersByTime(1);
    expect(said).toEqual(['cut', 'near (en-GB): 21, 3 left']);
  });

  test('never queues: the older is cut off, and one that waits is not said at all', () => {
    const { speech, said } = platform(near);
    const { say } = openSpeaker(speech, 'en');
    say('20, 4 left', 0);
    vi.advanceTimersByTime(100);
    say('21, 3 left', 320);
    vi.advanceTimersByTime(100);
    say('22, 2 left', 320);
    vi.advanceTimersByTime(1000);
    expect(said.filter((each) => each !== 'cut')).toEqual([
      'near (en-GB): 20, 4 left',
      'near (en-GB): 22, 2 left',
    ]);
    expect(said.at(2)).toBe('cut');
  });

  test('is not said by a voice that needs a network, nor where there is no speech at all', () => {
    const { speech, said } = platform(voice('far', 'en-GB', { localService: false }));
    openSpeaker(speech, 'en').say('21, 3 left', 0);
    openSpeaker(undefined, 'en').say('21, 3 left', 0);
    vi.advanceTimersByTime(1000);
    expect(said).toEqual(['cut']);
  });

  test('is hushed when its screen goes', () => {
    const { speech, said } = platform(near);
    const speaker = openSpeaker(speech, 'en');
    speaker.say('21, 3 left', 320);
    speaker.hush();
    vi.advanceTimersByTime(1000);
    expect(said).toEqual(['cut', 'cut']);
  });
});
