/** Words of a person in Markdown: nothing in them is mark-up. */
export function plain(text: string): string {
  return text.replace(/[\\`*_[\]<>#|~]/g, sign => `\\${sign}`);
}

/** Paragraphs, with the empty ones left out. */
export function paragraphs(...parts: (string | undefined | false)[]): string {
  return parts.filter(part => part).join('\n\n');
}

export function bullets(items: readonly string[], most = Number.POSITIVE_INFINITY): string {
  const shown = items.slice(0, most).map(item => `- ${item}`);
  if (items.length > most) shown.push(`- and ${items.length - most} more`);
  return shown.join('\n');
}

/** The first lines of a long text in Markdown. */
export function shortened(markdown: string, lines: number): string {
  const all = markdown.split('\n');
  return all.length <= lines ? markdown : `${all.slice(0, lines).join('\n')}\n- …`;
}
