import { hullFigures, type Vessel } from '@tailshaft/drivetrain';
import { capital } from '@tailshaft/mechanics';
import { type SettingsKind, VESSEL_VOCABULARY } from '@tailshaft/vocabulary';
import { type Block, section, table } from '../document/blocks.js';
import { quiet, type Text } from '../document/text.js';
import type { Sheet } from '../sheet.js';
import { factRows } from './facts.js';

/** What the work is filed under; what is open in it stands in the record. */
function filed(project: Vessel['project']): object | undefined {
  if (!project) return undefined;
  const { questions: _questions, actions: _actions, ...rest } = project;
  return Object.keys(rest).length > 1 ? rest : undefined;
}

/** What the vessel is and what it is for, with the criteria that its author chose. */
export function particularsSection(sheet: Sheet): Block {
  const { vessel } = sheet;
  const blocks: readonly (readonly [SettingsKind, object | undefined])[] = [
    ['duty', vessel.duty],
    ['hull', vessel.hull],
    ['certificate', vessel.certificate],
    ['helm', vessel.helm],
    ['project', filed(vessel.project)],
    ['criteria', vessel.criteria],
  ];
  return section('particulars', 'Particulars', [
    {
      block: 'table',
      caption: 'Vessel, duty and chosen criteria',
      columns: [
        { title: 'Fact' },
        { title: 'As written', wide: true },
        sheet.convertedColumn,
        { title: 'Evidence' },
        { title: 'Where' },
      ],
      groups: blocks.map(([name, block]) => ({
        title: capital(name),
        rows: block
          ? factRows(block, VESSEL_VOCABULARY[name]).map((row): Text[] => [
              row.label,
              row.written,
              sheet.converted(row),
              [row.evidence?.kind, row.evidence?.dated, row.evidence?.note].filter(Boolean).join(' '),
              sheet.place(row.origin) ?? '',
            ])
          : [[quiet('nothing declared'), '', '', '', '']],
      })),
    },
    hullTable(sheet),
  ]);
}

/** What length and displacement say of the hull. */
function hullTable(sheet: Sheet): Block | undefined {
  const figures = hullFigures(sheet.vessel);
  if (figures.length === 0) return undefined;
  return table(
    'What follows from the hull',
    [{ title: '' }, { title: 'Value', wide: true }],
    figures.map(value => [capital(value.label), sheet.number(value, sheet.vessel.name)]),
  );
}
