// Shapes that the screens share. What the kernel sends (`Model.get`) is typed where it is used.

/** What a screen may ask of its twin in the kernel (an anywidget model). */
export interface Model {
  get(name: string): any;
  on(event: string, listener: (...parts: any[]) => void): void;
  off(event: string, listener: (...parts: any[]) => void): void;
  send(message: Message): void;
  widget_manager?: { kernel?: any };
}

export interface Message {
  type: string;
  [part: string]: unknown;
}

/** Where a screen is drawn, and from what. */
export interface View {
  model: Model;
  el: HTMLElement;
}

export type Render = (view: View) => (() => void) | void;

/** A field of a form as the kernel describes it; a kind reads more of it than this. */
export interface Field {
  kind: string;
  name: string;
  prompt: string;
  [part: string]: any;
}

/** What is stored for a field. */
export interface Answer {
  value?: any;
  error?: string;
  read?: string;
  saved?: string;
  note?: string;
  blank?: boolean;
  short?: boolean;
  revision?: number;
}

export interface Ids {
  prompt: string;
  control: string;
  hint: string;
  read: string;
  status: string;
}

/** The part of a field that is filled in. */
export interface Control {
  element: HTMLElement;
  /**
   * Shows what is stored, after every save and look. `value` may be what could not be read, with
   * `error` beside it. What is still being typed stays.
   */
  show(state: Answer): void;
  setDisabled(value: boolean): void;
  /** The value was sent and not kept. */
  refused(): void;
  /** Sends what was typed and not sent yet. */
  flush?(): void;
  /** Whether something was typed that is not sent yet. */
  pending?(): boolean;
}

/** An answer kind's browser side. */
export interface Kind {
  /** How the prompt belongs to the control: its label, the legend of its group, or words above it. */
  prompt: "label" | "legend" | "words";
  /** Where the line stands that says what is saved. */
  status?: "above" | "below";
  /** What that line says while nothing is answered. */
  blank?: string;
  make(
    field: Field,
    ids: Ids,
    commit: (value: any) => void,
    typing: (changed: boolean, typed: any) => void,
  ): Control;
}

export type Point = [number, number];

/** What is not the same on every build: given by the build (build.mjs). */
declare global {
  const STYLES: string;
  const SCREENS_ID: string;
  const LAB_STYLES: string;
  // Where JupyterLab keeps prebuilt extensions, and this page its screens by version.
  var _JUPYTERLAB: Record<string, unknown> | undefined;
  var twoshaftChunks: Map<string, Promise<any>> | undefined;
  var twoshaftScreens: Map<string, Promise<{ screens: Record<string, Render> }>> | undefined;
}
