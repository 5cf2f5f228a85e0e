/** Numbers that a check told and does not tell while another fact is open, by the words of the number, each with its reason. */
export const HALF_NOT_TOLD: Readonly<Record<string, readonly (readonly [what: string, because: string])[]>> =
  {};
