import './camera-eye.css';
import { useEffect, useRef, useState } from 'preact/hooks';
import { systemClock } from '../../../app/clock.ts';
import { freshReads, type Seen } from '../../../app/fresh-reads.ts';
import { openScanner, type Scanner, type ScannerState } from '../../../app/scanner.ts';
import { Notice } from '../../../ui/notice/notice.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { cameraTroubleWords, scanWords as words } from '../../../words/scan-words.ts';

/** What the camera sees, and the lamp where it has one; or why there is no picture. Tells each label once while it stays in the picture. */
export const CameraEye = ({ onRead }: { onRead: (texts: readonly string[]) => void }) => {
  const video = useRef<HTMLVideoElement>(null);
  const [scanner, setScanner] = useState<Scanner | null>(null);
  const latest = useRef(onRead);
  latest.current = onRead;
  useEffect(() => {
    if (!video.current) return;
    let seen: Seen = new Map();
    const opened = openScanner({
      video: video.current,
      onFrame(texts) {
        const step = freshReads(seen, { texts, at: systemClock.monotonic() });
        seen = step.seen;
        if (step.fresh.length > 0) latest.current(step.fresh);
      },
    });
    setScanner(opened);
    return opened.close;
  }, []);
  const state: ScannerState = scanner?.state.value ?? { kind: 'starting' };
  return (
    <section class="scan-eye" data-state={state.kind} data-testid="scan-eye">
      <video
        ref={video}
        class="scan-picture"
        aria-label={words.picture}
        hidden={state.kind === 'failed'}
        muted
        playsInline
      />
      {state.kind === 'failed' ? (
        <Notice
          tone="warn"
          title={cameraTroubleWords[state.why].title}
          testId={`camera-${state.why}`}
          actions={
            <PressButton
              icon="retry"
              label={words.tryAgain}
              onAct={() => scanner?.again()}
              testId="scan-again"
            />
          }
        >
          {cameraTroubleWords[state.why].help}
        </Notice>
      ) : (
        <div class="scan-eye-foot">
          <p role="status">{eyeWords[state.kind]}</p>
          {state.kind === 'running' && state.torch !== null && (
            <PressButton
              size="bench-small"
              icon="day"
              label={words.light}
              selected={state.torch === 'on'}
              onAct={() => void scanner?.setTorch(state.torch !== 'on')}
              testId="scan-light"
            />
          )}
        </div>
      )}
    </section>
  );
};

const eyeWords = { starting: words.starting, running: words.holdUp, resting: words.resting } as const;
