/** Relative luminance of an sRGB colour '#rrggbb' (WCAG 2.2, definition of relative luminance), 0 to 1. */
const luminance = (colour: string): number => {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5]
    .map((start) => Number.parseInt(colour.slice(start, start + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
};

/**
 * Contrast ratio of two sRGB colours '#rrggbb', 1 to 21.
 * Source: W3C, Web Content Accessibility Guidelines (WCAG) 2.2, definition of contrast ratio.
 */
export const contrast = (one: string, other: string): number => {
  const [lighter = 0, darker = 0] = [luminance(one), luminance(other)].toSorted((a, b) => b - a);
  return (lighter + 0.05) / (darker + 0.05);
};
