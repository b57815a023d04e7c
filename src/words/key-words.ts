import { inLanguage } from './language.ts';

export const keyWords = inLanguage('keyWords', { space: 'space' });

const signs: Readonly<Record<string, string>> = {
  Backspace: '⌫',
  Enter: '↵',
  ' ': keyWords.space,
  ArrowRight: '→',
  ArrowLeft: '←',
  ArrowUp: '↑',
  ArrowDown: '↓',
};

/** A key, by `event.key`, as it is shown on a key cap. */
export function keySign(key: string): string {
  return signs[key] ?? key;
}
