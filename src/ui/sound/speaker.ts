/** The part of the platform's speech that is needed here. */
export type Speech = Pick<SpeechSynthesis, 'getVoices' | 'speak' | 'cancel'>;

/** The platform's speech; undefined where there is none. */
export const platformSpeech = (): SpeechSynthesis | undefined =>
  typeof speechSynthesis === 'undefined' ? undefined : speechSynthesis;

/**
 * A voice of `language` (such as `en`) that speaks without a network, the platform's own choice before others; undefined
 * when the device has none. Voices may come in late: ask again when they change.
 */
export const voiceOnDevice = (
  speech: Pick<Speech, 'getVoices'>,
  language: string,
): SpeechSynthesisVoice | undefined => {
  const fit = speech
    .getVoices()
    .filter(({ localService, lang }) => localService && lang.toLowerCase().split(/[-_]/)[0] === language);
  return fit.find((voice) => voice.default) ?? fit[0];
};

export interface Speaker {
  /** Says a text `afterMs` from now, in the place of whatever is still being said or waits to be. */
  readonly say: (text: string, afterMs: number) => void;
  readonly hush: () => void;
}

/** A voice for short answers; silent where no voice of `language` is on the device. */
export const openSpeaker = (speech: Speech | undefined, language: string): Speaker => {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  // Kept while it is spoken: browsers have been seen to break off what nobody holds any more.
  let spoken: SpeechSynthesisUtterance | undefined;

  const hush = (): void => {
    clearTimeout(waiting);
    speech?.cancel();
  };
  return {
    hush,
    say(text, afterMs) {
      hush();
      const voice = speech && voiceOnDevice(speech, language);
      if (!speech || !voice) return;
      waiting = setTimeout(() => {
        spoken = new SpeechSynthesisUtterance(text);
        spoken.voice = voice;
        spoken.lang = voice.lang;
        speech.speak(spoken);
      }, afterMs);
    },
  };
};
