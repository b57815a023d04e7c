import { useEffect, useState } from 'preact/hooks';
import { askDust } from '../../app/dust-study.ts';
import type { ShopDay, StageId } from '../../domain/log/ids.ts';
import type { DustMinutes } from '../../domain/study/dust-minutes.ts';
import { type DustOfWood, dustDay } from '../../domain/wood/dust-day.ts';
import { dustStages } from '../../domain/wood/tray-cautions.ts';
import { Disclosure } from '../../ui/notice/disclosure.tsx';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';
import { type DustLimit, dustLimits, dustWords as words } from '../../words/dust-words.ts';
import { nameOf } from '../../words/names.ts';
import { studyWords } from '../../words/study-words.ts';
import { goTo } from '../parts/address.ts';
import { useApp, useSession, useShop } from '../parts/app-context.ts';
import { WoodName } from '../parts/wood-name.tsx';

/** Minutes of dust-making work on each wood of the day, beside the maker's own earlier days and nothing else. */
export const DustPanel = ({ day }: { day: ShopDay }) => {
  const { registers } = useShop();
  const person = useSession().person.value;
  const stages = dustStages(registers);
  const lead =
    person === null ? words.leadAll : words.leadOne(nameOf(registers, { register: 'person', id: person }));
  return (
    <Panel
      title={words.title}
      lead={lead}
      actions={<Means label={studyWords.means}>{words.means}</Means>}
      testId="dust"
    >
      {stages === null ? <NotSaid /> : <DustOfDay day={day} stages={stages.join(' ')} />}
      <p>{words.noDosimeter}</p>
      <Disclosure summary={words.limits}>
        <Limits />
      </Disclosure>
    </Panel>
  );
};

const NotSaid = () => (
  <>
    <p>{words.notSaid}</p>
    <PressButton label={words.toStages} onAct={() => goTo('set-up', 'stages')} testId="dust-stages" />
  </>
);

type Found = readonly DustMinutes[] | 'reading' | 'failed';

/** `stages` are ids with spaces between them: the whole log is read when another stage makes dust, and not at each tap. */
const DustOfDay = ({ day, stages }: { day: ShopDay; stages: string }) => {
  const session = useSession();
  const store = useApp().database();
  const person = session.person.value;
  const [found, setFound] = useState<Found>('reading');
  useEffect(() => {
    let isWanted = true;
    const show = (now: Found) => isWanted && setFound(now);
    show('reading');
    const dusty = stages.split(' ').filter(Boolean) as StageId[];
    askDust({ session, store }, { stages: dusty, person: person ?? undefined }).then(show, () =>
      show('failed'),
    );
    return () => {
      isWanted = false;
    };
  }, [session, store, person, stages]);
  if (found === 'reading' || found === 'failed') return <p role="status">{words[found]}</p>;
  return <DustTable dust={dustDay(found, day)} />;
};

const DustTable = ({ dust: { woods, all } }: { dust: ReturnType<typeof dustDay> }) => (
  <DataTable
    caption={words.title}
    captionUnseen
    columns={[
      { key: 'wood', head: words.wood, cell: ({ species }: DustOfWood) => <WoodName species={species} /> },
      {
        key: 'day',
        head: words.day,
        numeric: true,
        cell: ({ species, minutes }) => <b data-testid={`dust-${species}`}>{words.minutes(minutes)}</b>,
      },
      { key: 'usual', head: words.usual, numeric: true, cell: usualWords },
      { key: 'days', head: words.usualOver, numeric: true, cell: ({ days }) => words.minutes(days) },
    ]}
    rows={woods}
    rowKey={({ species }) => species}
    empty={words.none}
    foot={[
      words.all,
      <b key="day">{words.minutes(all.minutes)}</b>,
      usualWords(all),
      words.minutes(all.days),
    ]}
    testId="dust-table"
  />
);

function usualWords({ usual }: Pick<DustOfWood, 'usual'>): string {
  return usual === null ? words.noUsual : words.minutes(usual);
}

const Limits = () => (
  <>
    <DataTable
      caption={words.limitsLead}
      columns={[
        { key: 'limit', head: words.limit, cell: ({ name }: DustLimit) => name },
        { key: 'value', head: words.value, numeric: true, cell: ({ value }) => value },
        { key: 'source', head: words.source, cell: ({ source }) => source },
      ]}
      rows={Object.values(dustLimits)}
      rowKey={({ name }) => name}
    />
    <p>{words.rules}</p>
  </>
);
