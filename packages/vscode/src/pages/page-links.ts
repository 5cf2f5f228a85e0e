/** Links to other pages, which a page inside the editor does not follow by itself, as a command that opens them. */
export function withPageLinks(html: string, page: string, command: string): string {
  return html.replace(/ href="([^"]*)"/g, (whole, target: string) => {
    const path = pathOf(target, page);
    if (path === undefined) return whole;
    return ` href="command:${command}?${encodeURIComponent(JSON.stringify([path]))}"`;
  });
}

/** The page that a relative link leads to, from the root of all pages; undefined for places in the page and outside. */
export function pathOf(target: string, page: string): string | undefined {
  if (/^(?:[a-z][a-z+.-]*:|#|\/\/)/i.test(target) || target === '') return undefined;
  const base = `page:/${page.replace(/^\//, '')}`;
  return decodeURIComponent(new URL(target, base).pathname).replace(/^\//, '');
}
