import {
  type Hand,
  handFor,
  handThatDrivesAhead,
  percent,
  type Sense,
  senseThatDrivesAhead,
} from '@tailshaft/mechanics';
import { type GearChoice, gearsThatTurn } from '../../analysis/gear-choice.js';
import { clutchesOf } from '../../analysis/gear-data.js';
import { handOf } from '../../analysis/hand.js';
import { rotationOf } from '../../analysis/rotation.js';
import { ratioWords } from '../../analysis/telling.js';
import { combinationsOf, pairOf, withClutch } from '../../analysis/twin.js';
import type { LineContext } from '../../judge/context.js';
import type { ModelEdit, Route } from '../../judge/route.js';
import { isWeak } from '../../model/fact.js';
import type { Clutch, Gear } from '../../model/gear.js';
import type { ShaftLine } from '../../model/vessel.js';
import { type GearChange, gearEdits } from '../gear-edits.js';
import { writtenRatio } from '../ratio/written-ratio.js';
import { fitHand, handWords, pumpFor, turnWords, useClutch } from './edits.js';
import { otherEngineRoutes } from './other-engine-routes.js';
import { isWelcome } from './turning-routes.js';

/** How many catalogue gears are offered. */
const MOST_GEARS = 3;

/** A ratio further off than this makes another propeller of it, which no fix of the rotation should bring along. */
const LIKE_RATIO = 0.03;

/** What data sheets round: a propeller that stays, or the other side of a pair, allows no more. */
const SAME_RATIO = 0.005;

/** A gear at a ratio that is offered already. */
interface Offered {
  readonly name: string | undefined;
  readonly ratio: number;
}

type About = Pick<LineContext, 'line' | 'analysis' | 'arrangement' | 'analysisOf' | 'catalogue' | 'vessel'>;

/**
 * Every consistent way out of a propeller that would drive the wrong way, each with what it leads to. None touches a
 * shift cable: crossing it only moves the fault into the clutch.
 */
export function handRoutes(context: About, without?: Offered): Route[] {
  const { ahead } = context.analysis.rotation;
  const hand = handOf(context.line);
  if (!ahead || !hand || !context.line.propeller) return [];
  return [
    otherHandRoute(context, ahead),
    ...clutchRoutes(context, hand),
    ...pairRoutes(context),
    ...gearRoutes(context, senseThatDrivesAhead(hand), without),
    ...otherEngineRoutes(context),
  ];
}

/** Runs ahead on each other clutch that turns the shaft as the hand needs and may do so all day. */
function clutchRoutes({ line, arrangement }: About, hand: Hand): Route[] {
  const { gear } = line;
  if (!gear?.aheadClutch) return [];
  return clutchesOf(gear, gear.variant)
    .filter(
      one => one.name !== gear.aheadClutch?.value && one.ahead?.value === 'continuous' && !isWeak(one.ahead),
    )
    .flatMap(one => {
      const sense = rotationOf(withClutch(line, one.name)).ahead;
      if (!sense || handThatDrivesAhead(sense) !== hand) return [];
      const title =
        `Run ${line.name} ahead on clutch ${one.name}: the shaft then turns ${turnWords(sense)}, as its ` +
        `${hand}-hand propeller needs${ratioChange(gear, one)}${pairWords(arrangement, line, hand)}`;
      return [{ title, edits: [useClutch(gear, one.name)] }];
    });
}

/** Catalogue gears that turn the shaft this way. */
export function gearRoutes(
  { line, arrangement, catalogue, vessel }: About,
  wanted: Sense,
  without?: Offered,
): Route[] {
  const { gear } = line;
  if (!gear) return [];
  const now = [gear.entry?.name, (gear.variant?.nominal ?? gear.ratioUsed?.value)?.si];
  const near = line.propeller?.change === 'retained' ? SAME_RATIO : LIKE_RATIO;
  return gearsThatTurn(line, wanted, catalogue.gears)
    .filter(one => one.entry.name !== now[0] || one.variant.nominal.si !== now[1])
    .filter(one => one.entry.name !== without?.name || one.variant.nominal.si !== without?.ratio)
    .filter(one => Math.abs(one.ratioChange ?? 0) <= near && suitsOtherSide(arrangement, line, one))
    .slice(0, MOST_GEARS)
    .map(one => ({
      title:
        `Fit gear ${one.entry.name} at ${nominalWords(one)} with clutch ${one.clutch.name} ahead: the shaft then ` +
        `turns ${turnWords(wanted)}${fasterWords(one.ratioChange)}`,
      edits: gearEdits(gear, wordsOf(line, one, { arrangement, vessel })),
    }));
}

function otherHandRoute({ line, arrangement }: About, ahead: Sense): Route {
  const hand = handThatDrivesAhead(ahead);
  return {
    title:
      `${handWords(line, hand)}: the shaft turns ${turnWords(ahead)} ahead and then drives ahead` +
      pairWords(arrangement, line, hand),
    edits: fitHand(line.propeller!, hand),
  };
}

/** Ways that change both sides at once, for pairs that end up turning opposite ways. */
export function pairRoutes({
  arrangement,
  analysisOf,
  vessel,
}: Pick<About, 'arrangement' | 'analysisOf' | 'vessel'>): Route[] {
  const pair = pairOf(arrangement);
  if (!pair) return [];
  return combinationsOf(pair, line => analysisOf(line).rotation)
    .filter(
      one =>
        one.allowed === 'yes' &&
        isWelcome({ arrangement, vessel }, one.pair) &&
        one.port.machineryOf === 'port',
    )
    .flatMap(one => {
      const sides = [one.port, one.starboard].map(choice => {
        const line = pair[choice.side];
        const edits: ModelEdit[] = [];
        const words: string[] = [];
        if (line.gear?.aheadClutch && line.gear.aheadClutch.value !== choice.clutch) {
          edits.push(useClutch(line.gear, choice.clutch));
          const other = clutchesOf(line.gear, line.gear.variant).find(
            clutch => clutch.name === choice.clutch,
          )!;
          words.push(`${line.name} runs ahead on clutch ${choice.clutch}${ratioChange(line.gear, other)}`);
        }
        if (line.propeller && handOf(line) !== choice.hand) {
          edits.push(...fitHand(line.propeller, choice.hand));
          words.push(`${line.name} gets a ${choice.hand}-hand propeller`);
        }
        return { edits, words };
      });
      if (sides.some(side => side.edits.length === 0)) return [];
      return [
        {
          title: `Change both sides: ${sides.flatMap(side => side.words).join('; ')}; propellers turn ${one.pair}`,
          edits: sides.flatMap(side => side.edits),
        },
      ];
    });
}

/** How the pair turns once this line has this hand. */
export function pairWords(arrangement: LineContext['arrangement'], line: ShaftLine, hand: Hand): string {
  const pair = pairOf(arrangement);
  if (!pair || (line !== pair.port && line !== pair.starboard)) return '';
  const other = handOf(line === pair.port ? pair.starboard : pair.port);
  if (!other) return '';
  if (other === hand) return `; both propellers are then ${hand}-hand`;
  const side = line === pair.port ? 'port' : 'starboard';
  return `; propellers then turn ${handFor(side, 'outward') === hand ? 'outward' : 'inward'}`;
}

/** Both sides of a pair keep one ratio, as near as data sheets round. */
function suitsOtherSide(
  arrangement: About['arrangement'],
  line: ShaftLine,
  { variant }: GearChoice,
): boolean {
  const pair = pairOf(arrangement);
  const other =
    pair && (line === pair.port ? pair.starboard : line === pair.starboard ? pair.port : undefined);
  const ratio = (other?.gear?.variant?.nominal ?? other?.gear?.ratioUsed?.value)?.si;
  return ratio === undefined || Math.abs(variant.nominal.si / ratio - 1) <= SAME_RATIO;
}

/** What fits this gear into the line, its pump set for the engine where it has to be. */
function wordsOf(
  line: ShaftLine,
  { entry, variant, clutch }: GearChoice,
  { arrangement, vessel }: Pick<About, 'arrangement' | 'vessel'>,
): GearChange {
  const byPump = entry.facts.inputRotation?.value?.word === 'either by pump index';
  const { atGearInput } = rotationOf(line);
  return {
    name: entry.name,
    ratio: writtenRatio(variant, clutch, vessel),
    clutch: clutch.name,
    ...(byPump && atGearInput ? { pump: pumpFor(atGearInput) } : {}),
    fitted: arrangement.revises === undefined ? 'here' : 'in its place',
  };
}

function nominalWords({ variant }: GearChoice): string {
  return variant.nominalFact.written;
}

function fasterWords(ratioChange: number | undefined): string {
  if (ratioChange === undefined || Math.abs(ratioChange) < 5e-4) return '';
  const faster = 1 / (1 + ratioChange) - 1;
  return `, ${percent(Math.abs(faster))} ${faster > 0 ? 'faster' : 'slower'} at equal engine speed`;
}

/** What the exact ratio of another clutch does to the shaft speed. */
function ratioChange(gear: Gear, other: Clutch): string {
  const exact = (clutch: Clutch | undefined) => clutch?.exact?.value?.si ?? gear.variant?.exact?.value?.si;
  const now = clutchesOf(gear, gear.variant).find(one => one.name === gear.aheadClutch?.value);
  const [from, to] = [exact(now), exact(other)];
  if (!from || !to || Math.abs(to / from - 1) < 5e-4) return '';
  return ` at ${ratioWords(to)} instead of ${ratioWords(from)}${fasterWords(to / from - 1)}`;
}
