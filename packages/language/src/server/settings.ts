import {
  type Connection,
  DidChangeConfigurationNotification,
  type InitializeParams,
} from 'vscode-languageserver';

/** Everything a person can set, with what it is when nobody set it. The manifest is checked against this table. */
export const SETTINGS = {
  'hints.shaftSpeed': {
    default: true,
    doc: 'Show the propeller shaft speed at rated power beside each line.',
  },
  'hints.shaftTorque': {
    default: true,
    doc: 'Show the propeller shaft torque at rated power beside each line.',
  },
  'hints.propellerHand': { default: true, doc: 'Show the hand that each propeller needs to drive ahead.' },
  'hints.margins': { default: true, doc: 'Show the smallest margin of each line beside its name.' },
  'hints.siUnits': { default: false, doc: 'Show the SI value beside quantities in other units.' },
  'lenses.checks': {
    default: true,
    doc: 'Show how many checks hold, fail and cannot tell above each line and vessel.',
  },
  'acceptances.roles': {
    default: '',
    doc: 'Who may accept failures here, by rule: "rotation/ class surveyor, flag surveyor; capacity/ naval architect". Empty: the usual roles.',
  },
  'acceptances.longest': {
    default: '',
    doc: 'For how long an acceptance may last here: "18 months". Empty: as long as it says.',
  },
  'rules.pages': {
    default: '',
    doc: 'Where the pages of the findings lie: an address to which the code of a finding is added. Empty: the pages that are installed with the server.',
  },
} as const;

type Table = typeof SETTINGS;
export type Setting = keyof Table;
type Kind<T> = T extends boolean ? boolean : string;

const SECTION = 'tailshaft';

/** Settings as the client last told them; a client that tells none gets the defaults. */
export class Settings {
  private told: Readonly<Record<string, unknown>> = {};
  private pulls = false;
  private registers = false;
  private readonly listeners: (() => void)[] = [];

  /** `installed`: the folder of the pages that come with the server, as an address; empty where there are none. */
  constructor(private installed = '') {}

  /** Where the page of a finding can be opened; nothing rather than an address that leads nowhere. */
  pageOf(code: string): string | undefined {
    const published = this.get('rules.pages');
    if (published) return `${published}${code}`;
    return this.installed ? `${this.installed}${code}.md` : undefined;
  }

  get<S extends Setting>(setting: S): Kind<Table[S]['default']> {
    let value: unknown = this.told;
    for (const step of setting.split('.')) value = (value as Record<string, unknown> | undefined)?.[step];
    const fallback = SETTINGS[setting].default;
    return (typeof value === typeof fallback ? value : fallback) as Kind<Table[S]['default']>;
  }

  onChange(listener: () => void): void {
    this.listeners.push(listener);
  }

  initialize(params: InitializeParams): void {
    this.pulls = params.capabilities.workspace?.configuration === true;
    this.registers = params.capabilities.workspace?.didChangeConfiguration?.dynamicRegistration === true;
    const options: unknown = params.initializationOptions;
    if (!options || typeof options !== 'object') return;
    const { pages } = options as { readonly pages?: unknown };
    if (typeof pages === 'string') this.installed = pages;
    this.take({ [SECTION]: options });
  }

  async initialized(connection: Connection): Promise<void> {
    if (this.registers) {
      await connection.client.register(DidChangeConfigurationNotification.type, { section: SECTION });
    }
    await this.changed(connection, undefined);
  }

  /** Settings came with the notification, or must be asked for. */
  async changed(connection: Connection, sent: unknown): Promise<void> {
    if (this.pulls) this.take({ [SECTION]: await connection.workspace.getConfiguration(SECTION) });
    else this.take(sent);
    for (const listener of this.listeners) listener();
  }

  private take(sent: unknown): void {
    const section = (sent as Record<string, unknown> | null | undefined)?.[SECTION];
    if (section && typeof section === 'object') this.told = section as Record<string, unknown>;
  }
}
