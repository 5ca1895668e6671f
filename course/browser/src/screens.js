// The course's screens by name: what a form, a rig or the start page is drawn by. The page loads
// this once; kinds of answers (kinds/) are put in by the build.

/** @import { Render } from "./types.js" */

import { renderBench } from "./rigs/bench.js";
import { renderSimulator } from "./rigs/build.js";
import { renderCord } from "./rigs/cord.js";
import { renderDepthGauge } from "./rigs/depth.js";
import { renderExploded } from "./rigs/exploded.js";
import { renderFace } from "./rigs/face.js";
import { renderFaultBoard } from "./rigs/fault_board.js";
import { renderGate } from "./rigs/gate.js";
import { renderGears } from "./rigs/gears.js";
import { renderHazards } from "./rigs/hazards.js";
import { renderLifting } from "./rigs/lifting.js";
import { renderMicrometer } from "./rigs/micrometer.js";
import { renderOwnChecks } from "./rigs/own_checks.js";
import { renderPress } from "./rigs/press.js";
import { renderRules } from "./rigs/rules.js";
import { renderRunOut } from "./rigs/runout.js";
import { renderSealant } from "./rigs/sealant.js";
import { renderSeat } from "./rigs/seat.js";
import { renderShims } from "./rigs/shims.js";
import { renderSketch } from "./rigs/sketch.js";
import { renderThread } from "./rigs/thread.js";
import { renderUnitSection } from "./rigs/unit_section.js";
import { renderWholeBuild } from "./rigs/whole_build.js";
import { renderWrench } from "./rigs/wrench.js";
import { renderDesk } from "./screens/desk.js";
import { renderForm } from "./screens/form.js";
import { renderQuestion } from "./screens/question.js";
import { renderStart } from "./screens/start.js";

/** @type {Record<string, Render>} */
export const screens = {
  bench: renderBench,
  build: renderSimulator,
  cord: renderCord,
  depth: renderDepthGauge,
  desk: renderDesk,
  exploded: renderExploded,
  face: renderFace,
  fault_board: renderFaultBoard,
  form: renderForm,
  gate: renderGate,
  gears: renderGears,
  hazards: renderHazards,
  lifting: renderLifting,
  micrometer: renderMicrometer,
  own_checks: renderOwnChecks,
  press: renderPress,
  question: renderQuestion,
  rules: renderRules,
  runout: renderRunOut,
  sealant: renderSealant,
  seat: renderSeat,
  shims: renderShims,
  sketch: renderSketch,
  start: renderStart,
  thread: renderThread,
  unit_section: renderUnitSection,
  whole_build: renderWholeBuild,
  wrench: renderWrench,
};
