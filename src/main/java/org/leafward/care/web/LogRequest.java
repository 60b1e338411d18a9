package org.leafward.care.web;

import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.media.Schema.RequiredMode;
import org.jspecify.annotations.Nullable;
import org.leafward.care.WorkDone;

/**
 * An entry of the care log as somebody gives it, in a form or as JSON.
 *
 * @param planting what it was done for; the whole site when left out
 * @param work the kind of work, as rules name it
 * @param day on which; today at the site when left out
 * @param amount how much; may be left out
 * @param unit what the amount is in, as for tasks
 * @param area m² for litres, square feet for gallons
 * @param note for those who read it later
 */
record LogRequest(@Schema(types = "string", format = "uuid") @Nullable String planting,
		@Schema(requiredMode = RequiredMode.REQUIRED) @Nullable String work,
		@Schema(types = "string", format = "date") @Nullable String day,
		@Schema(types = "number", format = "double") @Nullable String amount, @Nullable String unit,
		@Schema(types = "number", format = "double") @Nullable String area,
		@Schema(maxLength = WorkDone.LONGEST_NOTE) @Nullable String note) {

	WorkRequest done() {
		return new WorkRequest(this.day, this.amount, this.unit, this.area, this.note);
	}

}
