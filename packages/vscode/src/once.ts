/** Does it once for all calls within a while, at the end of the first while. */
export function once(action: () => void, milliseconds: number): () => void {
  let waiting = false;
  return () => {
    if (waiting) return;
    waiting = true;
    setTimeout(() => {
      waiting = false;
      action();
    }, milliseconds);
  };
}
