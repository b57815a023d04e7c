import './ui/theme/theme.css';
import { effect } from '@preact/signals';
import { render } from 'preact';
import { openApp } from './app/app.ts';
import { openPreferences } from './app/preferences.ts';
import { systemTimer } from './app/saver.ts';
import { watchUpdates } from './app/updates.ts';
import { AppContext } from './screens/parts/app-context.ts';
import { Shell } from './screens/shell/shell.tsx';
import { showTheme } from './ui/theme/theme-name.ts';
import { language } from './words/locale.ts';
import { shellWords } from './words/shell-words.ts';
import { allowOwnScripts } from './worker/own-scripts.ts';

/** Storage may be refused as a whole, even to look at. */
function tabletStorage(): Storage | undefined {
  try {
    return localStorage;
  } catch {
    return undefined;
  }
}

allowOwnScripts();
const startJournalWorker = () =>
  new Worker(new URL('./worker/journal-worker.ts', import.meta.url), { type: 'module' });

const storage = tabletStorage();
const preferences = openPreferences(storage);
effect(() => showTheme(document.documentElement, preferences.theme.value));

const app = openApp({
  preferences,
  storage,
  openTwin: async (store) =>
    (await import('./store/open-twin.ts')).openTwin({
      store,
      storage,
      after: systemTimer.after,
      start: typeof Worker === 'undefined' ? undefined : startJournalWorker,
    }),
  updates: watchUpdates(import.meta.env.PROD ? 'sw.js' : ''),
  version: __APP_VERSION__,
  builtAt: __BUILT_AT__,
  stationName: (letter) => shellWords.stationName(letter),
  makeDemo: async (now) => (await import('../shared/demo/demo-shop.ts')).demoShop({ now }),
});

const place = document.getElementById('app');

function draw(): void {
  if (!place) return;
  const opening = [...place.childNodes];
  place.replaceChildren();
  try {
    render(
      <AppContext.Provider value={app}>
        <Shell />
      </AppContext.Provider>,
      place,
    );
  } catch (error) {
    // The words of the page itself, with the way to the rescue page, stand again.
    place.replaceChildren(...opening);
    throw error;
  }
}

if (language === 'en') draw();
// A language whose texts do not load is no reason for a tablet to stand still.
else
  void import('./words/other-language.ts')
    .then((other) => other.speak(language, document.documentElement))
    .then(draw, draw);
