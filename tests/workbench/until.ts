/** Asks again until the answer is wanted; the last answer is in the message when it never is. */
export async function until<T>(
  what: string,
  ask: () => Promise<T> | T,
  wanted: (answer: T) => boolean,
  limit = 30_000,
): Promise<T> {
  const end = Date.now() + limit;
  for (;;) {
    const answer = await ask();
    if (wanted(answer)) return answer;
    if (Date.now() > end)
      throw new Error(`Waited ${limit / 1000} s for ${what}; last seen: ${JSON.stringify(answer)}`);
    await new Promise(resolve => setTimeout(resolve, 50));
  }
}
