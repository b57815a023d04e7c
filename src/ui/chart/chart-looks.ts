import type { ChartLooks } from './chart-props.ts';

/** An 'rgb(…)' as a light wash of itself, which shows what lies under it. */
export const washed = (colour: string, share: number): string =>
  colour.replace(/^rgb\((.+)\)$/, (_, channels: string) =>
    channels.includes(',') ? `rgba(${channels}, ${share})` : `rgb(${channels} / ${share})`,
  );

/** What a printer draws: black on white; series are told apart by dash and shape. */
const printed = {
  ink: 'rgb(0, 0, 0)',
  paper: 'rgb(255, 255, 255)',
  rule: 'rgb(150, 150, 150)',
  plain: 'rgb(0, 0, 0)',
  flaw: 'rgb(0, 0, 0)',
  saved: 'rgb(0, 0, 0)',
  copper: 'rgb(70, 70, 70)',
};

/** The colours of the theme in force, as the canvas takes them: asked of an element, which knows system colours too. */
const shown = (place: HTMLElement): typeof printed => {
  const probe = place.appendChild(document.createElement('span'));
  const colour = (name: string): string => {
    probe.style.color = `var(--${name})`;
    return getComputedStyle(probe).color;
  };
  const colours = {
    ink: colour('ink'),
    paper: colour('paper'),
    rule: colour('rule'),
    plain: colour('ink'),
    flaw: colour('flaw'),
    saved: colour('saved'),
    copper: colour('copper'),
  };
  probe.remove();
  return colours;
};

/** How a chart in this place looks, on the screen or on paper. */
export const looksOf = (place: HTMLElement, onPaper: boolean): ChartLooks => {
  const colours = onPaper ? printed : shown(place);
  return { ...colours, band: washed(colours.ink, 0.13), family: getComputedStyle(place).fontFamily };
};
