/** The anchor that code sites give a heading. */
export function anchorOf(heading: string): string {
  return heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N} _-]/gu, '')
    .replace(/ /g, '-');
}

export function fenced(language: string, lines: readonly string[]): string {
  return `\`\`\`${language}\n${lines.join('\n')}\n\`\`\``;
}

/** A table; cells hold no line ends and no bars of their own. */
export function tableOf(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const row = (cells: readonly string[]) =>
    `| ${cells.map(cell => cell.replace(/\|/g, '\\|').replace(/\n/g, ' ')).join(' | ')} |`;
  return [row(head), row(head.map(() => '---')), ...rows.map(row)].join('\n');
}

/** A file name made from words. */
export function fileName(words: string): string {
  return words.toLowerCase().replace(/ /g, '-');
}
