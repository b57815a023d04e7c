import './print-root.css';
import type { ComponentChildren } from 'preact';
import { render } from 'preact';
import { useLayoutEffect, useState } from 'preact/hooks';

export interface PrintRootProps {
  /** A page as it lies in the printer, in mm. */
  readonly page: { readonly width: number; readonly height: number };
  /** Blank on each side of the page, in mm. */
  readonly margin: number;
  /** What is printed instead of the screen. It knows no context of the app. */
  readonly children: ComponentChildren;
}

/**
 * What a printer gets instead of the screen, at its true size. It stands beside the app, so that nothing of the screen's
 * layout moves it; the size of its pages is a style sheet of its own, since the policy lets no style into the markup.
 */
export const PrintRoot = ({ page, margin, children }: PrintRootProps) => {
  const [root] = useState(() => document.createElement('div'));
  useLayoutEffect(() => {
    root.className = 'print-root';
    document.body.append(root);
    return () => {
      render(null, root);
      root.remove();
    };
  }, [root]);
  useLayoutEffect(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(`@page { size: ${page.width}mm ${page.height}mm; margin: ${margin}mm; }
.print-page { block-size: calc(${page.height - 2 * margin}mm - 1px); }`);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((each) => each !== sheet);
    };
  }, [page.width, page.height, margin]);
  useLayoutEffect(() => render(children, root), [children, root]);
  return null;
};
