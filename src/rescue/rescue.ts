/**
 * The rescue page: reads what Tallywright keeps in this browser, without the app and without judging it, and hands it
 * out as one file. It only ever reads.
 */
import type { Found } from './find.ts';
import { copy, download, share, waysOf } from './hand-over.ts';
import { readDatabases } from './read-databases.ts';
import { readFiles } from './read-files.ts';
import { readSettings } from './read-settings.ts';
import { rescueFile } from './rescue-file.ts';
import { speak } from './speak.ts';

const words = speak(document);

/** A part of the page. Throws when the page lacks it, which only a wrong page can bring about. */
function part<Kind extends HTMLElement>(id: string): Kind {
  const found = document.getElementById(id);
  if (!found) throw new Error(`the page has no ${id}`);
  return found as Kind;
}

function element(tag: string, ...inside: readonly (Node | string)[]): HTMLElement {
  const made = document.createElement(tag);
  made.append(...inside);
  return made;
}

const say = (text: string) => part('said').replaceChildren(text);

async function readAll(): Promise<readonly Found[]> {
  const [databases, files] = await Promise.all([
    readDatabases(globalThis.indexedDB),
    readFiles(navigator.storage),
  ]);
  return [...databases, files, readSettings(() => localStorage)];
}

function show(found: readonly Found[]): void {
  const held = found.filter(({ lines }) => lines.length > 0);
  const records = held.reduce((sum, { lines }) => sum + lines.length, 0);
  part('state').replaceChildren(words.found(records));
  part('found').replaceChildren(
    ...held.map((each) => {
      const { newest } = each;
      const count = words.ofPlace(each);
      return element(
        'li',
        element('strong', each.title),
        ` ${newest === null ? count : `${count}, ${words.newest(newest)}`}`,
      );
    }),
  );
  const unread = found.flatMap((each) => each.unread);
  part('unread').hidden = unread.length === 0;
  part('unread-list').replaceChildren(...unread.map((each) => element('li', each)));
  part('ways').hidden = records === 0;
}

function offer(file: File): void {
  const ways = waysOf(window, file);
  part('download').hidden = !ways.download;
  part('share').hidden = !ways.share;
  part('no-download').hidden = ways.download || ways.share;
  part('download').onclick = () => {
    download(file);
    say(words.saved);
  };
  part('share').onclick = async () => say((await share(file)) ? words.shared : words.notShared);
  part('show').onclick = async () => {
    part<HTMLTextAreaElement>('text').value = await file.text();
    part('as-text').hidden = false;
    part('text').focus();
  };
  part('copy').onclick = async () =>
    say((await copy(part<HTMLTextAreaElement>('text'))) ? words.copied : words.notCopied);
}

async function look(): Promise<void> {
  part('state').replaceChildren(words.reading);
  say('');
  const found = await readAll();
  show(found);
  offer(rescueFile(found, new Date()));
  document.body.dataset.read = 'all';
}

part('again').onclick = () => void look();
void look();
