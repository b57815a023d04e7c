/** The looks of the app: paper and steel, the same by night, and black on white for a lamp on the glass. */
export type ThemeName = 'light' | 'dark' | 'glare';

/** In the order in which they are offered. */
export const themeNames: readonly ThemeName[] = ['light', 'dark', 'glare'];

/** Shows a theme on the whole page. */
export const showTheme = (page: HTMLElement, theme: ThemeName): void => {
  page.dataset.theme = theme;
};
