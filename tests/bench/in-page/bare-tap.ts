/** The least that can answer a tap once it is on the disk: a button, a count, a mark, one strict transaction. */

/** Puts it into the page, under the same names as the app's. */
export async function showBareTap(): Promise<void> {
  const opening = indexedDB.open('bare tap');
  opening.onupgradeneeded = () => opening.result.createObjectStore('events');
  const db = await new Promise<IDBDatabase>((resolve, reject) => {
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = () => reject(opening.error);
  });
  const pass = document.createElement('button');
  pass.dataset.testid = 'pass';
  pass.textContent = 'Pass';
  pass.style.cssText = 'width: 300px; height: 200px';
  const left = document.createElement('p');
  left.dataset.testid = 'stage-left';
  const figures = document.createElement('span');
  figures.className = 'figures';
  left.append(figures);
  const mark = document.createElement('p');
  mark.dataset.testid = 'saved-mark';
  document.body.append(pass, left, mark);
  let count = 0;
  pass.addEventListener('pointerup', () => {
    count += 1;
    const tx = db.transaction('events', 'readwrite', { durability: 'strict' });
    // The page is opened again in each round, on the same database.
    tx.objectStore('events').put({ kind: 'passed', text: 'x'.repeat(600) }, count);
    tx.oncomplete = () => {
      figures.textContent = String(count);
      mark.dataset.state = 'saved';
    };
    tx.commit();
  });
}
