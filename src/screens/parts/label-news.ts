import { signal } from '@preact/signals';

/** What is to be said of the label that a code reader has read last; empty while nothing is. */
export const labelNews = signal('');

/** Takes what a code reader has read, in the place of going to the tray: a screen that reads labels itself. */
export const labelTaker = signal<((text: string) => void) | null>(null);
