import { label } from '@clampwright/words';
import type { ReactNode } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';

interface DocumentProps {
  readonly title: string;
  /** address of the style sheet, or the sheet itself for a file that stands alone */
  readonly style: { readonly href: string } | { readonly css: string };
  /** a word by which our own files are known again */
  readonly mark: 'clampwright-page' | 'clampwright-cards';
  readonly bodyClass?: string;
  readonly children: ReactNode;
}

/** A whole HTML document: language, title, one style sheet, a skip link, the content. No script, nothing from elsewhere. */
export function documentHtml({ title, style, mark, bodyClass, children }: DocumentProps): string {
  return `<!doctype html>\n${renderToStaticMarkup(
    <html lang="en">
      <head>
        <meta charSet="utf-8" />
        <meta name="generator" content={mark} />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content={mark === 'clampwright-cards' ? 'light' : 'light dark'} />
        <title>{title}</title>
        <link rel="icon" href="data:," />
        {/* biome-ignore lint/security/noDangerouslySetInnerHtml: our own constant sheet, no input in it */}
        {'href' in style ? <link rel="stylesheet" href={style.href} /> : <style dangerouslySetInnerHTML={{ __html: style.css }} />}
      </head>
      <body className={bodyClass}>
        <a className="skip" href="#content">
          {label('page.skip')}
        </a>
        {children}
      </body>
    </html>,
  )}\n`;
}
