import { readFile } from 'node:fs/promises';

/**
 * The grammar as bundles carry it. The generator writes a tree of which most branches are alike; here each is written once, as
 * the number of its names and what stands under them: a string, or the number of a branch before it.
 */
export const shortGrammar = {
  name: 'short-grammar',
  setup: ({ onLoad }) =>
    onLoad({ filter: /[\\/]language[\\/]src[\\/]generated[\\/]grammar\.ts$/ }, async ({ path }) => {
      const text = await readFile(path, 'utf8');
      const [, literal] = /loadGrammarFromJson\(('(?:[^'\\]|\\[\s\S])*')\)/.exec(text) ?? [];
      if (!literal) throw new Error(`${path} holds no grammar that is known how to shorten.`);
      const grammar = new Function(`return ${literal}`)();
      const { names, branches } = shortened(JSON.parse(grammar));
      if (JSON.stringify(whole({ names, branches })) !== JSON.stringify(JSON.parse(grammar)))
        throw new Error('The grammar is another one when it is written short.');
      const contents = text.replace(
        literal,
        () => `JSON.stringify((${whole})(${JSON.stringify({ names, branches })}))`,
      );
      return { contents, loader: 'ts' };
    }),
};

function shortened(tree) {
  const names = [];
  const branches = [];
  const known = new Map();
  const number = one => {
    if (typeof one === 'string' || typeof one === 'boolean') return one;
    if (typeof one !== 'object' || one === null) throw new Error(`The grammar holds ${one}.`);
    const list = Array.isArray(one);
    const branch = [list ? -1 : nameNumber(Object.keys(one).join()), ...Object.values(one).map(number)];
    const key = JSON.stringify(branch);
    if (!known.has(key)) known.set(key, branches.push(branch) - 1);
    return known.get(key);
  };
  const nameNumber = all => {
    if (!names.includes(all)) names.push(all);
    return names.indexOf(all);
  };
  number(tree);
  return { names, branches };
}

/** Runs in the bundle too, so it looks at nothing but what it is given. */
function whole({ names, branches }) {
  const made = [];
  for (const [kind, ...parts] of branches) {
    const found = parts.map(one => (typeof one === 'number' ? made[one] : one));
    made.push(
      kind < 0 ? found : Object.fromEntries(names[kind].split(',').map((name, at) => [name, found[at]])),
    );
  }
  return made.at(-1);
}
