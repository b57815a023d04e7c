import { signal } from '@preact/signals';
import { describe, expect, test } from 'vitest';
import type { StartWorker } from '../../src/app/copy-work.ts';
import { openStudy, type StudyState } from '../../src/app/study.ts';
import { shopOf } from '../../src/domain/shop/shop.ts';
import type { StudyQuestions } from '../../src/domain/study/study.ts';
import { studyJob } from '../../src/store/study-job.ts';
import type { FromWorker, ToWorker } from '../../src/worker/log-protocol.ts';
import { aWorkshop } from '../support/a-shop.ts';
import { testRoutes as routes } from '../support/study-makers.ts';
import { person } from '../support/workshop.ts';

const questions: StudyQuestions = { routes, filter: {}, comparison: null, answered: [], charted: null };
const ofEdda: StudyQuestions = { ...questions, filter: { person: person.edda } };
const ofOdo: StudyQuestions = { ...questions, filter: { person: person.odo } };

/** A shop with one bored piece that can bore more; its log is held in memory. */
function aSession() {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 9);
  shop.by('edda');
  shop.pass(tray, 'bore');
  const view = signal({ shop: shopOf(shop.log), uncounted: 0 });
  return {
    session: { view, allEvents: async () => shop.log },
    size: () => shop.log.length,
    bore() {
      shop.pass(tray, 'bore');
      view.value = { shop: shopOf(shop.log), uncounted: 0 };
    },
  };
}

/** A worker that does its work as the real one does, when `let` is called; what it was told is noted. */
function aWorker() {
  const told: ToWorker[] = [];
  const world = { ended: 0, started: 0, fail: (_message: string) => {} };
  const lines: string[] = [];
  const start = (() => {
    world.started += 1;
    const answer = studyJob();
    let say = (_message: FromWorker) => {};
    return {
      async postMessage(message: ToWorker) {
        told.push(message);
        if (message.kind === 'lines') lines.push(...message.lines);
        if (message.kind !== 'study') return;
        try {
          const log =
            message.log.kind === 'lines' ? { kind: 'lines' as const, lines: lines.splice(0) } : message.log;
          say({ kind: 'done', result: structuredClone(await answer(message.order, log)) });
        } catch (error) {
          say({ kind: 'failed', problem: String(error) });
        }
      },
      addEventListener(kind: string, listen: (event: object) => void) {
        if (kind === 'message') say = (data) => listen({ data });
        else world.fail = (message) => listen({ message });
      },
      terminate() {
        world.ended += 1;
      },
    };
  }) as unknown as StartWorker;
  return { start, told, world };
}

const judged = (state: StudyState) =>
  state.kind === 'none' ? null : (state.last?.study.reach.judged ?? null);

describe.each([
  ['in the window', undefined],
  ['in a worker', aWorker],
])('a study %s', (_, make) => {
  test('is made when it is asked for, and says as of how many entries', async () => {
    const { session, size } = aSession();
    const study = openStudy({ subject: 'study', session, store: null, start: make?.().start });
    expect(study.state.value).toEqual({ kind: 'none' });
    const asked = study.ask(questions);
    expect(study.state.value).toEqual({ kind: 'working', last: null });
    await asked;
    expect(study.state.value).toMatchObject({ kind: 'ready', last: { asOf: size(), questions } });
    expect(judged(study.state.value)).toBe(1);
    study.close();
  });

  test('is made anew when the log has grown, and shows the last one meanwhile', async () => {
    const { session, bore, size } = aSession();
    const study = openStudy({ subject: 'study', session, store: null, start: make?.().start });
    await study.ask(questions);
    bore();
    const asked = study.ask(questions);
    expect([study.state.value.kind, judged(study.state.value)]).toEqual(['working', 1]);
    await asked;
    expect(study.state.value).toMatchObject({ kind: 'ready', last: { asOf: size() } });
    expect(judged(study.state.value)).toBe(2);
    study.close();
  });

  test('of a store that cannot be read has failed, and can be asked for again', async () => {
    const { session } = aSession();
    const study = openStudy({ subject: 'study', session, store: 'no such store', start: make?.().start });
    await study.ask(questions);
    expect(study.state.value).toMatchObject({ kind: 'failed', last: null });
    const asked = study.ask(questions);
    expect(study.state.value.kind).toBe('working');
    await asked;
    study.close();
  });
});

describe('the worker of a study', () => {
  test('is asked once for the same questions on the same log, and answers others with what it has read', async () => {
    const { session } = aSession();
    const { start, told, world } = aWorker();
    const study = openStudy({ subject: 'study', session, store: null, start });
    await study.ask(questions);
    await study.ask({ ...questions, routes: { ...routes, byBatch: new Map(routes.byBatch) } });
    const asked = () => told.filter(({ kind }) => kind === 'study').length;
    expect(asked()).toBe(1);
    await study.ask({ ...questions, routes: { ...routes, byBatch: new Map() } });
    await study.ask(ofOdo);
    expect([asked(), judged(study.state.value)]).toEqual([3, 0]);
    expect([world.started, world.ended]).toEqual([1, 0]);
    study.close();
    expect(world.ended).toBe(1);
  });

  test('is asked the last of the questions that came while it was at work', async () => {
    const { session } = aSession();
    const { start, told } = aWorker();
    const study = openStudy({ subject: 'study', session, store: null, start });
    await Promise.all([questions, ofEdda, ofOdo].map(study.ask));
    const filters = told.flatMap((message) =>
      message.kind === 'study' && message.order.subject === 'study' ? [message.order.questions.filter] : [],
    );
    expect(filters).toEqual([questions.filter, ofOdo.filter]);
    expect(study.state.value).toMatchObject({ kind: 'ready', last: { questions: ofOdo } });
  });

  test('opens a store by itself: the window gives no entry', async () => {
    const { session } = aSession();
    const { start, told } = aWorker();
    await openStudy({ subject: 'study', session, store: 'hafts', start }).ask(questions);
    expect(told).toMatchObject([{ kind: 'study', log: { kind: 'store', name: 'hafts' } }]);
  });

  test('that dies fails the study, and another takes its place', async () => {
    const { session } = aSession();
    const { start, world } = aWorker();
    const dying: StartWorker = () => ({ ...start(), postMessage: () => world.fail('out of memory') });
    let starts = 0;
    const study = openStudy({
      subject: 'study',
      ...{ session, store: null },
      start: () => {
        starts += 1;
        return starts === 1 ? dying() : start();
      },
    });
    await study.ask(questions);
    expect(study.state.value).toMatchObject({
      kind: 'failed',
      problem: expect.stringContaining('out of memory'),
    });
    expect(world.ended).toBe(1);
    await study.ask(questions);
    expect(study.state.value.kind).toBe('ready');
  });

  test('is ended when the study is closed, and nothing comes of what it was at', async () => {
    const { session } = aSession();
    const { start, world } = aWorker();
    const study = openStudy({ subject: 'study', session, store: null, start });
    const asked = study.ask(questions);
    study.close();
    await asked;
    expect(study.state.value).toEqual({ kind: 'working', last: null });
    await study.ask(ofOdo);
    expect([study.state.value.kind, world.ended]).toEqual(['working', world.started]);
  });
});
