/** Shows one page of the ui kit: `?page=bench&theme=dark&dir=rtl`. Not part of the app. */
import '../../../src/ui/theme/theme.css';
import './gallery.css';
import { render } from 'preact';
import { showTheme, themeNames } from '../../../src/ui/theme/theme-name.ts';
import { BenchPage, NotSavedPage } from './bench-page.tsx';
import { ButtonsPage } from './buttons-page.tsx';
import { FlowPage } from './flow-page.tsx';
import { FormsPage, SheetPage } from './forms-page.tsx';
import { CodePage, NumberPage } from './pads-page.tsx';
import { PlacesPage } from './places-page.tsx';
import { TablesPage } from './tables-page.tsx';

const pages = {
  buttons: ButtonsPage,
  bench: BenchPage,
  'not-saved': NotSavedPage,
  code: CodePage,
  number: NumberPage,
  forms: FormsPage,
  sheet: SheetPage,
  tables: TablesPage,
  flow: FlowPage,
  places: PlacesPage,
};

const asked = new URLSearchParams(location.search);
const theme = themeNames.find((name) => name === asked.get('theme')) ?? 'light';
const name = Object.keys(pages).find((page): page is keyof typeof pages => page === asked.get('page'));
const Page = pages[name ?? 'buttons'];

document.documentElement.dir = asked.get('dir') ?? 'ltr';
showTheme(document.documentElement, theme);
const place = document.getElementById('app');
if (place) render(<Page />, place);
