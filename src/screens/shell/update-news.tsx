import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { updateWords as words } from '../../words/update-words.ts';
import { useApp } from '../parts/app-context.ts';

/** Said after an update, until it is seen: which version this is now. */
export const UpdateNews = () => {
  const { updates, version } = useApp();
  if (!updates.arrived.value) return null;
  const close = () => {
    updates.arrived.value = false;
  };
  return (
    <Notice
      tone="saved"
      title={words.arrived(version)}
      actions={<PressButton tone="quiet" label={words.well} onAct={close} testId="update-arrived-close" />}
      testId="update-arrived"
    />
  );
};
