import { BooksPanel } from './books-panel.tsx';
import { CopiesPanels } from './copies-panels.tsx';
import { PhotosPanel } from './photos-panel.tsx';
import { PromisePanel } from './promise-panel.tsx';
import { TablesPanel } from './tables-panel.tsx';

/** What goes out of the tablet as files, and comes back; and whether what is on it adds up. */
export const Files = () => (
  <>
    <CopiesPanels />
    <PhotosPanel />
    <TablesPanel />
    <BooksPanel />
    <PromisePanel />
  </>
);
