// Wires up whatever the page has; each part works without the others.
import { followJobs } from "./jobs.js";
import { wireChoices } from "./choices.js";
import { wirePlaces } from "./place.js";
import { wireTraces } from "./traces.js";
import { wireTurning, wireChangePart } from "./turn.js";
import { wireBringing } from "./bring.js";
import { wireOrder } from "./order.js";
import { wireNotes } from "./notes.js";
import { wireTrial } from "./trial.js";

wireChoices();
wirePlaces();
wireOrder();
wireNotes();
wireBringing();
wireTrial();
wireTurning();
wireChangePart();
followJobs();
wireTraces();
