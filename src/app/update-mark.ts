const name = 'tallywright update';

/** Notes that this window is loaded anew for an update; false where a window keeps no notes. */
export function leaveUpdateMark(): boolean {
  try {
    sessionStorage.setItem(name, 'taken');
    return true;
  } catch {
    return false;
  }
}

/** Whether this page was loaded for an update. True once: the note is gone afterwards. */
export function takeUpdateMark(): boolean {
  try {
    const left = sessionStorage.getItem(name) !== null;
    sessionStorage.removeItem(name);
    return left;
  } catch {
    return false;
  }
}
