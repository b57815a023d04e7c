/** SQLite on files of its origin. Says when its table is made; then takes lines of a log in and says how many rows it has. */
import openSqlite from '@sqlite.org/sqlite-wasm';
import type { Entry } from '../../../src/domain/log/chain.ts';

const worker = globalThis as unknown as Pick<Worker, 'addEventListener' | 'postMessage'>;

const sqlite = await openSqlite();
const { OpfsSAHPoolDb } = await sqlite.installOpfsSAHPoolVfs({});
const db = new OpfsSAHPoolDb('/log.sqlite');
db.exec(
  `create table events (station text, seq integer, kind text, event text, primary key (station, seq)) without rowid`,
);

worker.addEventListener('message', ({ data }: MessageEvent<Uint8Array>) => {
  const insert = db.prepare('insert into events values (?, ?, ?, ?)');
  db.transaction(() => {
    for (const line of new TextDecoder().decode(data).split('\n')) {
      if (line === '') continue;
      const { event } = JSON.parse(line) as Entry;
      insert.bind([event.station, event.seq, event.kind, JSON.stringify(event)]).stepReset();
    }
  });
  insert.finalize();
  worker.postMessage(Number(db.selectValue('select count(*) from events')));
});
worker.postMessage(0);
