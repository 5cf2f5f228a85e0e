import type { Role } from '@tailshaft/drivetrain';
import type { PartLayers } from './part.js';

/** The parts of the line before, each taken once: what nobody takes is a part that the revision does not mention. */
export class Olds {
  private left: readonly PartLayers[];

  constructor(private readonly all: readonly PartLayers[]) {
    this.left = all;
  }

  ofRole(role: Role): readonly PartLayers[] {
    return this.all.filter(one => one.role === role);
  }

  /** The one of that name, or the first that is left. */
  take(role: Role, name?: string): PartLayers | undefined {
    const own = this.left.filter(one => one.role === role);
    const found = name === undefined ? own[0] : own.find(one => one.name === name);
    this.left = this.left.filter(one => one !== found);
    return found;
  }

  takeAll(role: Role): readonly PartLayers[] {
    const own = this.left.filter(one => one.role === role);
    this.left = this.left.filter(one => one.role !== role);
    return own;
  }

  get rest(): readonly PartLayers[] {
    return this.left;
  }
}
