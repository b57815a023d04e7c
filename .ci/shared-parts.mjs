/**
 * Puts small modules that the same or nearly the same parts share together: left to itself the bundler makes a file of each
 * few lines, 235 in all, and each start and each update asks for every one of them.
 */

/** Sources of so many bytes, before they are made small, are worth a file of their own. */
const worthAFile = 12_000;

/** @typedef {{ getModuleInfo: (id: string) => { importedIds: readonly string[] } | null }} Modules */

/**
 * The groups of the bundler (`output.codeSplitting`). The first screen, with all that it imports, is one file: several are
 * larger once they are compressed, and parts import from it what they share with it. Of the rest only modules of one level
 * are put together, so that no two files ever import each other: such files would be run in an order that nobody chose.
 *
 * @param {string} first the module at which the app starts
 */
export function sharedParts(first) {
  return {
    groups: [
      { name: 'index', test: (/** @type {string} */ id) => id === first, priority: 1 },
      {
        name: levelsAbove(first),
        minShareCount: 2,
        entriesAware: true,
        entriesAwareMergeThreshold: worthAFile,
        includeDependenciesRecursively: false,
      },
    ],
  };
}

/** Whether a file holds what several parts share. */
export const isShared = (/** @type {string} */ name) => name.startsWith('level-');

/** @param {string} first */
function levelsAbove(first) {
  /** @type {Map<string, number>} */
  const levels = new Map();
  /** @param {string} id @param {Modules} modules */
  const importsOf = (id, modules) => modules.getModuleInfo(id)?.importedIds ?? [];

  /** What the first screen has is below all levels. @param {string} id @param {Modules} modules */
  function noteFirst(id, modules) {
    if (levels.has(id)) return;
    levels.set(id, -1);
    for (const needed of importsOf(id, modules)) noteFirst(needed, modules);
  }

  /** One above all that it imports. @param {string} id @param {Modules} modules @returns {number} */
  function levelOf(id, modules) {
    const known = levels.get(id);
    if (known !== undefined) return known;
    // A package may import in a circle.
    levels.set(id, 0);
    const level = 1 + Math.max(-1, ...importsOf(id, modules).map((needed) => levelOf(needed, modules)));
    levels.set(id, level);
    return level;
  }

  return (/** @type {string} */ id, /** @type {Modules} */ modules) => {
    noteFirst(first, modules);
    return `level-${levelOf(id, modules)}`;
  };
}
