/** How much of a name a file name shows. */
const longest = 40;

/** Letters and digits that every file system takes; accents are left off, other scripts too. */
export function plainLetters(name: string): string {
  return name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, longest);
}
