/** A row as RFC 4180 has it. A cell that a spreadsheet would take for a formula is given as text. */
export function csvRow(values: readonly string[]): string {
  return values
    .map(value => {
      const plain = /^[=+@\t\r]|^-(?![\d.]+$)/.test(value) ? `'${value}` : value;
      return /[",\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
    })
    .join(',');
}
