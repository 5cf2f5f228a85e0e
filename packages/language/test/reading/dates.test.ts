import { expect, it } from 'vitest';
import { checkText } from '../../../../tests/support/check.js';

const spec = (date: string) => `// Seen 2026-02-30.
engine Kittiwake-9 "of 2026-02-30" {
  source "sheet 2026-13-01" dated ${date}
}
vessel V {
  revision A dated ${date} "drawn 2026-00-00"
  accept shafting/overhang on V because "seen" by "surveyor" dated ${date} until ${date}
  arrangement built {
    shaftline Port {
      shaft { diameter 50 mm [measured ${date}] }
    }
  }
}
`;

const dated = async (date: string) => {
  const text = spec(date);
  const { findings } = await checkText(text);
  return findings
    .filter(one => one.code === 'text/date')
    .map(one => text.slice(one.place.start, one.place.end));
};

it.each(['2026-02-30', '2027-06-31', '2026-13-01', '2026-00-10', '2025-02-29'])(
  '%s is on no calendar, wherever it is read',
  async date => {
    expect(await dated(date)).toEqual(Array(5).fill(date));
  },
);

it.each(['2026-02-28', '2024-02-29', '2026-12-31', '0099-01-01'])('%s is a day', async date => {
  expect(await dated(date)).toEqual([]);
});
