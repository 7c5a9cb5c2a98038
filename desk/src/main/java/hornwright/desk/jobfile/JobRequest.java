package hornwright.desk.jobfile;

import hornwright.bench.plan.PlanInputs;
import tools.jackson.databind.JsonNode;

/**
 * A job as a file gives it.
 *
 * @param title how the horn is called on the sheets
 * @param shop whose bench it lies on; empty when not said
 * @param asRead the file itself, repeated in plan.json
 */
public record JobRequest(PlanInputs inputs, String title, String shop, JsonNode asRead) {}
