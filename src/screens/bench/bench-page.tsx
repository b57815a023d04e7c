import { CuringPage } from './curing/curing-page.tsx';
import { MixPage } from './mix/mix-page.tsx';
import { SpeedPage } from './speed-page.tsx';

const pages = { speed: SpeedPage, curing: CuringPage, mix: MixPage } as const;

/** A page of the bench beside its stages. */
export const BenchPage = ({ page }: { page: keyof typeof pages }) => {
  const Page = pages[page];
  return <Page />;
};
