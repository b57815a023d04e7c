import { aWorkshop, backTo, lowered, mended, scrapped } from '../../support/a-shop.ts';
import { part } from '../../support/workshop.ts';

/**
 * Three days at the lathe, 63 taps: ten hafts of ash and six of plum, with every outcome of a flaw, a slip that is
 * taken back, a sheet that is put back, recounts both ways, a split and a join. The figures beside the lines are the
 * pieces that are left, counted by hand; the test holds the sums to them.
 */
export function threeDaysOfHafts() {
  const shop = aWorkshop();
  const core = part.core;
  const setUp = shop.log.length;

  // Monday: sixteen blanks are bored, and eight of them go into the eight clamps.
  const ash = shop.tray('ash-copper', 10);
  const plum = shop.tray('plum-copper', 6);
  shop.pass(ash, 'bore', { pieces: 3 });
  shop.pass(ash, 'bore', { pieces: 3 });
  shop.flaw(ash, 'bore', { why: 'blown', outcome: scrapped() });
  shop.pass(ash, 'bore', { pieces: 3 }); // ash: 9 wait to be glued, 1 scrapped
  shop.pass(plum, 'bore', { pieces: 6 });
  shop.load(ash, 'glue', { pieces: 5 });
  shop.load(plum, 'glue', { pieces: 3 }); // clamps: 5 ash + 3 plum

  // Tuesday, half a minute between taps.
  shop.later(24 * 60);
  shop.pace(30_000);
  shop.pass(ash, 'glue', { pieces: 5, held: true });
  shop.pass(plum, 'glue', { pieces: 2, held: true });
  shop.flaw(plum, 'glue', { why: 'gap', outcome: mended, held: true });
  shop.load(ash, 'glue', { pieces: 4 });
  shop.load(plum, 'glue', { pieces: 3 }); // clamps: 4 ash + 3 plum
  shop.pass(ash, 'turn', { pieces: 2 });
  shop.flaw(ash, 'turn', { why: 'tear-out', outcome: lowered });
  shop.flaw(ash, 'turn', { why: 'catch', outcome: backTo('glue') });
  shop.flaw(ash, 'turn', { why: 'blown', outcome: scrapped(core) }); // ash: 2 firsts and 1 second to sand
  shop.pass(plum, 'turn');
  shop.flaw(plum, 'turn', { why: ['catch', 'tear-out'], outcome: mended });
  shop.pass(plum, 'turn'); // plum: 3 to sand
  shop.undo(shop.pass(plum, 'sand'));
  shop.flaw(plum, 'sand', { why: 'scratch', outcome: lowered });
  shop.pass(plum, 'sand', { pieces: 2 }); // plum: 2 firsts and 1 second to grade
  shop.pass(ash, 'sand', { pieces: 2 });
  shop.pass(ash, 'sand', { grade: 'second' }); // ash: 2 firsts and 1 second to grade
  shop.pass(ash, 'grade');
  shop.flaw(ash, 'grade', { why: 'scratch', outcome: backTo('sand') });
  shop.pass(ash, 'grade', { grade: 'second' });
  shop.pass(ash, 'sand');
  shop.pass(ash, 'grade'); // the scratched one has caught up: 2 firsts and 1 second to photograph
  shop.pass(ash, 'photo', { pieces: 2 });
  shop.pass(ash, 'photo', { grade: 'second' }); // ash finished: 2 firsts, 1 second
  shop.flaw(plum, 'grade', { why: 'gap', outcome: scrapped(core, part['copper-ferrule']) });
  shop.pass(plum, 'grade');
  shop.pass(plum, 'grade', { grade: 'second' });
  shop.pass(plum, 'photo'); // plum finished: 1 first; 1 second waits for its photograph
  shop.load(ash, 'glue'); // the one that was sent back: all 8 clamps are full
  const splitOff = shop.split(plum, 'glue', { pieces: 2, held: true });
  shop.recount(plum, 'glue', { counted: 2, why: 'found', held: true }); // plum: 1 more than was made
  shop.recount(ash, 'glue', { counted: 4, why: 'lost', held: true }); // ash: 1 less than was made
  const tuesdayEvening = [...shop.log];

  // Wednesday: everything that the clamps held goes to the end, but for two pieces of plum.
  shop.later(24 * 60);
  shop.pass(ash, 'glue', { pieces: 4, held: true }); // one of them for the second time
  shop.pass(ash, 'turn', { pieces: 3 });
  shop.pass(ash, 'turn');
  shop.pass(ash, 'sand', { pieces: 2 });
  shop.pass(ash, 'sand');
  shop.flaw(ash, 'sand', { why: 'scratch', outcome: mended });
  shop.pass(ash, 'grade', { pieces: 4 });
  shop.pass(ash, 'photo', { pieces: 3 });
  shop.flaw(ash, 'photo', { why: 'scratch', outcome: lowered }); // ash finished: 5 firsts, 2 seconds
  shop.pass(splitOff, 'glue', { pieces: 2, held: true });
  shop.join(splitOff, plum);
  shop.pass(plum, 'glue', { pieces: 2, held: true });
  shop.flaw(plum, 'turn', { why: 'tear-out', outcome: scrapped() });
  shop.pass(plum, 'turn', { pieces: 3 });
  shop.pass(plum, 'sand', { pieces: 3 });
  shop.pass(plum, 'grade', { pieces: 2 });
  shop.flaw(plum, 'grade', { why: 'gap', outcome: backTo('turn') }); // plum: 1 waits to be turned again
  shop.pass(plum, 'photo', { pieces: 2 });
  const last = shop.pass(plum, 'photo', { grade: 'second' }); // plum finished: 3 firsts, 1 second
  shop.undo(shop.undo(last));

  return { ...shop, ash, plum, splitOff, tuesdayEvening, taps: shop.log.length - setUp };
}
