import { computed } from '@preact/signals';
import type { Updates } from './updates.ts';

/**
 * The same updates, offered and applied only while nothing waits to be saved: a reload would lose a tap that is not
 * on disk yet.
 */
export function updatesWhenSaved(updates: Updates, isSaved: () => boolean): Updates {
  return {
    ...updates,
    waiting: computed(() => updates.waiting.value && isSaved()),
    apply() {
      if (isSaved()) updates.apply();
    },
  };
}
