import type { Role } from '@tailshaft/drivetrain';
import { PLACE_VOCABULARY } from '@tailshaft/vocabulary';
import type { LineReading } from '../reading/arrangement.js';
import type { Host } from '../reading/place.js';
import { type Tell, tellNothingOnThisSide } from './ask.js';
import { keep } from './keep.js';
import type { Olds } from './olds.js';
import { type PartLayers, roleOf, withoutHanded } from './part.js';
import type { LinePlan } from './plan.js';

/**
 * What a line takes from the line it mirrors. What is new there is new here too, without the facts that have a hand. What
 * is kept there is kept here: the part that *this* side had, with the same modification.
 */
export class Mirror {
  private readonly asked = new Set<Role>();

  constructor(
    private readonly reading: LineReading,
    private readonly arrangement: string,
    private readonly mirrored: LinePlan,
    private readonly before: LinePlan | undefined,
    private readonly olds: Olds,
    private readonly tell: Tell,
  ) {}

  /** The parts of one role. */
  of(role: Role): PartLayers[] {
    return this.mirrored.layers.filter(one => one.role === role).flatMap(one => this.part(one) ?? []);
  }

  /** The parts of the roles of which the line itself says nothing; what the other side removes is removed here. */
  silent(spoken: ReadonlySet<Role>): PartLayers[] {
    const layers = this.mirrored.layers
      .filter(one => !spoken.has(one.role))
      .flatMap(one => this.part(one) ?? []);
    for (const part of this.mirrored.reading.parts) {
      const role = roleOf(part);
      if (part.action !== 'remove' || spoken.has(role)) continue;
      if (part.name === undefined) this.olds.takeAll(role);
      else this.olds.take(role, part.name);
    }
    return layers;
  }

  private part(there: PartLayers): PartLayers | undefined {
    const { role } = there;
    const place = { path: `${this.arrangement}.${this.reading.name}.${role}`, origin: this.host(role) };
    const { kept: _kept, old: _old, ...rest } = there;
    if (there.stated !== 'retained' && there.stated !== 'modified') {
      this.olds.take(role);
      return { ...rest, ...place, facts: there.facts.map(one => withoutHanded(role, one)) };
    }
    const old = this.olds.take(role, there.name) ?? this.olds.take(role);
    if (!old || !this.before) {
      if (!this.asked.has(role)) tellNothingOnThisSide(this.tell, this.reading, there);
      this.asked.add(role);
      return undefined;
    }
    const said = withoutHanded(role, there.said);
    const { name: _name, namePlace: _place, entry: _entry, ...unnamed } = rest;
    return keep({ ...unnamed, ...place, facts: [said], said }, old, this.before);
  }

  /** A mirrored part stands nowhere in the text: what is missing of it is written in its line. */
  private host(role: Role): Host {
    const { namePlace, host } = this.reading;
    return {
      ...namePlace,
      headEnd: namePlace.end,
      vocabulary: PLACE_VOCABULARY[role]!,
      insertInto: host,
      insertAs: role,
    };
  }
}
