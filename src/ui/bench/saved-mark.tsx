import './saved-mark.css';

/** How far an act has come: none yet, felt by the app, on the disk, not on the disk, taken back. */
export type SavedState = 'idle' | 'taken' | 'saved' | 'not-saved' | 'undone';

export interface SavedMarkProps {
  state: SavedState;
  words: Readonly<Record<SavedState, string>>;
  testId?: string | undefined;
}

/** One shape a state: a hollow peg, a half-driven peg, a tick in a full disc, a cross in a square, an arrow back. */
const shapes: Readonly<Record<SavedState, { line: string; body?: string }>> = {
  idle: { line: 'M6 24A18 18 0 1 0 42 24A18 18 0 1 0 6 24' },
  taken: { line: 'M6 24A18 18 0 1 0 42 24A18 18 0 1 0 6 24', body: 'M6 24A18 18 0 0 0 42 24Z' },
  saved: { line: 'M14 25L21 32L35 17', body: 'M3 24A21 21 0 1 0 45 24A21 21 0 1 0 3 24' },
  'not-saved': { line: 'M14 14L34 34M34 14L14 34', body: 'M3 3H45V45H3Z' },
  undone: { line: 'M17 9L7 19L17 29M7 19H29A10 10 0 0 1 29 39H14' },
};

/** The rack of four pegs: each state but idle has its own place. */
const places: readonly SavedState[] = ['taken', 'saved', 'undone', 'not-saved'];

/** Taken is not saved: the states differ in shape, in word and in place. */
export const SavedMark = ({ state, words, testId }: SavedMarkProps) => (
  <div class="saved-mark" data-state={state} data-testid={testId}>
    <span class="saved-mark-rack" aria-hidden="true">
      {places.map((place) => {
        const shape = shapes[place === state ? place : 'idle'];
        return (
          <svg
            key={place}
            class="saved-mark-peg"
            data-peg={place === state ? place : 'idle'}
            width="48"
            height="48"
            viewBox="0 0 48 48"
            aria-hidden="true"
            focusable="false"
          >
            {shape.body && <path class="saved-mark-body" d={shape.body} />}
            <path class="saved-mark-line" d={shape.line} />
          </svg>
        );
      })}
    </span>
    <span class="saved-mark-word" role="status">
      {words[state]}
    </span>
  </div>
);
