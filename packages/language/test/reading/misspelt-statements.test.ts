import { describe, expect, it } from 'vitest';
import { Specs } from '../edit/specs.js';

const TEXT = `engine Kite { rating medium { power 300 kW at 2300 rpm } }
vessel V {
  arrangement existing {
    shaftline Port {
      engine Kite at medium
      shaft { diameter 1.75"  length 4' 2" }
      propeller { hand left }
    }
  }
  require speed at least 22 kn at full power
  arrangement proposed revises existing {
    shaftline Port {
      replace engine Kite at medium
      retain shaft
      remove propeller
    }
  }
}
`;

const told = async (text: string) => {
  const { check } = await Specs.read({ 'misspelt.shaft': text });
  return check.problems.map(
    one => `${one.code} at "${text.slice(one.start, one.end)}": ${one.choices?.[0]?.text}`,
  );
};

describe('a misspelt word of a statement', () => {
  it('is nothing that the text itself has', async () => {
    expect(await told(TEXT)).toEqual([]);
  });

  it.each([
    ['retain shaft', 'retan shaft', 'retan', 'retain'],
    ['remove propeller', 'remov propeller', 'remov', 'remove'],
    ['replace engine', 'replce engine', 'replce', 'replace'],
    ['retain shaft', 'modfy shaft', 'modfy', 'modify'],
    ['shaftline Port {\n      replace', 'shaftlin Port {\n      replace', 'shaftlin', 'shaftline'],
    ['arrangement proposed', 'arangement proposed', 'arangement', 'arrangement'],
    ['revises', 'revisses', 'revisses', 'revises'],
    ['require', 'requre', 'requre', 'require'],
  ])('%s written as %s is one finding with its suggestion', async (right, wrong, at, meant) => {
    expect(await told(TEXT.replace(right, wrong))).toEqual([`text/stray at "${at}": ${meant}`]);
  });
});
