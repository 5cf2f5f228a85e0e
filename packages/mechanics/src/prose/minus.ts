/** A number as it is printed has a minus sign and no hyphen; a spec and a data file keep the hyphen of the keyboard. */
export function minusSign(number: string): string {
  return number.replace(/(?<![\p{L}\d])-(?=\d)/gu, '−');
}
