/* The content of a spec as YAML, block by block and line by line, with a schema that knows blocks, numbers and words. */

/** What a value may be: a block, or words that begin with a number, or other words. */
export const SCHEMA = {
  $schema: 'http://json-schema.org/draft-07/schema#',
  type: 'object',
  additionalProperties: { $ref: '#/definitions/value' },
  definitions: {
    value: {
      anyOf: [
        { type: 'object', additionalProperties: { $ref: '#/definitions/value' } },
        { type: 'string', pattern: '^-?[0-9]+([./][0-9]+)?( |%|:|$)' },
        { type: 'string', pattern: '^[A-Za-z"(]' },
      ],
    },
  },
};

export function yamlText(spec) {
  const rows = ['# yaml-language-server: $schema=./schema.json'];
  const taken = [new Set()];
  for (const line of spec.replace(/([{}])/g, '\n$1\n').split('\n')) {
    const said = line.trim();
    if (said === '' || said.startsWith('//')) continue;
    if (said === '}') {
      taken.pop();
      continue;
    }
    if (said === '{') {
      rows[rows.length - 1] = rows
        .at(-1)
        .replace(
          /^(\s*)(.*?): "?(.*?)"?$/,
          (_, space, key, rest) => `${space}${key}${rest === 'yes' ? '' : ` ${rest.replaceAll(':', ' ')}`}:`,
        );
      taken.push(new Set());
      continue;
    }
    const [, words, value] = /^([A-Za-z][A-Za-z -]*?)(?: +((?:[\d"].*)|\S+))?$/.exec(said) ?? ['', said];
    let key = words.replaceAll('"', '').replaceAll(':', ' ').trim() || 'also';
    for (let count = 2; taken.at(-1).has(key); count++)
      key = `${words.replaceAll(/[":]/g, ' ').trim()} ${count}`;
    taken.at(-1).add(key);
    rows.push(
      `${'  '.repeat(taken.length - 1)}${key}: ${JSON.stringify(value?.replaceAll('"', '') ?? 'yes')}`,
    );
  }
  return `${rows.join('\n')}\n`;
}
