import { openSpeaker, platformSpeech, voiceOnDevice } from '../../ui/sound/speaker.ts';
import { language } from '../../words/locale.ts';

/** Speaks the counts of this window, in the language of the app's words. */
export const countSpeaker = openSpeaker(platformSpeech(), language);

/** Whether a voice for the counts is on the device by now. */
export function hasVoice(): boolean {
  const speech = platformSpeech();
  return speech !== undefined && voiceOnDevice(speech, language) !== undefined;
}

/** Calls back when the device's voices change: some come in only after the first question. Returns how to stop. */
export function onVoices(tell: () => void): () => void {
  const speech = platformSpeech();
  speech?.addEventListener?.('voiceschanged', tell);
  return () => speech?.removeEventListener?.('voiceschanged', tell);
}
