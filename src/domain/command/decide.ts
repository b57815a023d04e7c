import type { Shop } from '../shop/shop.ts';
import type { Command } from './command.ts';
import { decideAtBench, isBenchCommand } from './decide-at-bench.ts';
import { decideCard } from './decide-card.ts';
import { decideMoisture } from './decide-moisture.ts';
import { decideLetPhotosGo, decidePhotograph, decidePhotographPiece } from './decide-photos.ts';
import { decideRaise, decideRaiseFinished } from './decide-raise.ts';
import { decideRecount } from './decide-recount.ts';
import { decideSample } from './decide-sample.ts';
import { decideChangeRoute, decideSet } from './decide-set-up.ts';
import { decideMoveOnShelf } from './decide-shelf.ts';
import { decideClean, decideCount, decideReceive } from './decide-stores.ts';
import { decideTargets } from './decide-targets.ts';
import { decideJoin, decideMakeTrays, decideRecode, decideSplit } from './decide-trays.ts';
import { decideUndo, isOfRoute } from './decide-undo.ts';
import { decideUndoOfRoute } from './decide-undo-of-route.ts';
import type { Circumstances, Decision } from './decision.ts';

/** Turns a command into the events that it amounts to, or says why not. Touches nothing. */
export function decide(shop: Shop, command: Command, at: Circumstances): Decision {
  if (isBenchCommand(command)) return decideAtBench(shop, command, at);
  switch (command.kind) {
    case 'make-trays':
      return decideMakeTrays(shop, command, at);
    case 'split':
      return decideSplit(shop, command, at);
    case 'join':
      return decideJoin(shop, command, at);
    case 'recode':
      return decideRecode(shop, command, at);
    case 'recount':
      return decideRecount(shop, command, at);
    case 'raise':
      return decideRaise(shop, command, at);
    case 'raise-finished':
      return decideRaiseFinished(shop, command, at);
    case 'enter-card':
      return decideCard(shop, command, at);
    case 'receive-parts':
      return decideReceive(shop, command, at);
    case 'count-parts':
      return decideCount(shop, command, at);
    case 'clean-parts':
      return decideClean(shop, command, at);
    case 'sample-parts':
      return decideSample(shop, command, at);
    case 'read-moisture':
      return decideMoisture(shop, command, at);
    case 'photograph-piece':
      return decidePhotographPiece(shop, command, at);
    case 'photograph':
      return decidePhotograph(shop, command, at);
    case 'let-photos-go':
      return decideLetPhotosGo(command, at);
    case 'move-on-shelf':
      return decideMoveOnShelf(shop, command, at);
    case 'change-route':
      return decideChangeRoute(shop, command, at);
    case 'set':
      return decideSet(shop, command, at);
    case 'set-targets':
      return decideTargets(shop, command, at);
    case 'undo':
      return isOfRoute(command.events) ? decideUndoOfRoute(shop, command, at) : decideUndo(shop, command, at);
  }
}
