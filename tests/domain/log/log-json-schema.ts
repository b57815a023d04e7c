import { type JsonSchema, toJsonSchema } from '@valibot/to-json-schema';
import * as v from 'valibot';
import {
  eventSchema,
  outcomeSchema,
  plainEvent,
  trayFactsSchema,
  voidableEvent,
} from '../../../src/domain/log/event.ts';
import { moveSchema, placeSchema } from '../../../src/domain/log/place.ts';
import { deepestVoid } from '../../../src/domain/log/read-event.ts';
import { stampSchema } from '../../../src/domain/log/stamp.ts';
import { zoneSchema } from '../../../src/domain/log/zone.ts';
import { registerSchema } from '../../../src/domain/set-up/register.ts';
import {
  longestMarkNote,
  longestName,
  longestNote,
  markNoteSchema,
  nameSchema,
  noteSchema,
} from '../../../src/domain/set-up/text-schema.ts';

const description = `One entry of the log, as a line of an exported file holds it; one branch per kind of event. \
Further fields are allowed everywhere: a newer version may have added them. What this schema cannot say: \
an entry of another kind is of a newer version, to be kept and passed on; \
station and seq together name one event, and a station numbers its own without a gap; \
stamps of a station rise, and the events of one tap share one; \
the copy that a void carries equals the event of that station and seq, and voids nest at most ${deepestVoid} deep; \
the moves of a pass or a flaw add up to its pieces and leave its stage; of a split or a join each piece that leaves one \
tray comes to the other; \
"again" counts the pieces whose place names a "redo"; "day" is the shop day of the moment in the shop's zone; \
ids name facts that some set-up entry sets, in whatever order entries come; \
names are composed (NFC) and hold no marks that turn the direction of text. \
Lengths of text count code points here; for zone names, codes and keys the app counts UTF-16 units, which is the same \
for the characters that they hold.`;

const [, voidEvent] = eventSchema.options;

const lengths = new Map<unknown, number>([
  [nameSchema.pipe.at(-1), longestName],
  [noteSchema.pipe.at(-1), longestNote],
  [markNoteSchema.pipe.at(-1), longestMarkNote],
]);

/** The JSON Schema of the log, made from the schema that the app reads events with. */
export function logJsonSchema(): JsonSchema {
  const branches = Object.fromEntries(
    plainEvent.options.map((branch) => [branch.entries.kind.literal, branch]),
  );
  const schema = toJsonSchema(v.union([...plainEvent.options, voidEvent]), {
    target: 'draft-2020-12',
    definitions: {
      ...branches,
      voided: voidEvent,
      voidable: voidableEvent,
      stamp: stampSchema,
      zone: zoneSchema,
      place: placeSchema,
      move: moveSchema,
      'tray-facts': trayFactsSchema,
      outcome: outcomeSchema,
      'set-up-fact': registerSchema,
      name: nameSchema,
      note: noteSchema,
      'note-of-mark': markNoteSchema,
    },
    ignoreActions: ['brand'],
    // A length in code points is a check of our own in the app's schema, and `maxLength` in a JSON Schema. Any other
    // check has no words there and stops the making of the schema.
    overrideAction: ({ valibotAction, jsonSchema }) => {
      const longest = lengths.get(valibotAction);
      return longest === undefined ? undefined : { ...jsonSchema, maxLength: longest };
    },
  });
  return { $id: 'log.schema.json', title: 'Log of a Tallywright shop', description, ...schema };
}
