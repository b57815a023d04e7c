import { CopiesPanels } from './copies-panels.tsx';

/** What goes out of the tablet as files, and comes back. */
export const Files = () => <CopiesPanels />;
