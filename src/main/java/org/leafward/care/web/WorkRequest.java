package org.leafward.care.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.care.AmountUnit;
import org.leafward.care.WorkDone;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;

/**
 * What somebody says of work, in a form or as JSON; nothing is checked yet.
 *
 * @param day on which; today at the site when left out
 * @param amount how much; may be left out
 * @param unit what the amount is in
 * @param area m² for litres, square feet for gallons; brings a volume of water into the
 * water balance
 * @param note for those who read it later
 */
record WorkRequest(@Schema(types = "string", format = "date") @Nullable String day,
		@Schema(types = "number", format = "double") @Nullable String amount, @Schema(allowableValues = {
				"mm", "inches", "litres", "gallons", "kilograms", "pounds", "bags", "pieces",
				"minutes" }) @Nullable String unit,
		@Schema(types = "number", format = "double") @Nullable String area,
		@Schema(maxLength = WorkDone.LONGEST_NOTE) @Nullable String note){

	static final WorkRequest NOTHING = new WorkRequest(null, null, null, null, null);

	static WorkRequest on(LocalDate day) {
		return new WorkRequest(day.toString(), null, null, null, null);
	}

	WorkDone toWork(LocalDate today) {
		Findings all = new Findings();
		Supplier<LocalDate> when = all.read(() -> blank(this.day) ? today : Given.date("day", this.day));
		Supplier<Optional<Double>> given = all.read(() -> number("amount", this.amount, "the unit beside it"));
		Supplier<Optional<Double>> over = all
			.read(() -> number("area", this.area, "m² for litres, square feet for gallons"));
		Supplier<Optional<AmountUnit>> in = all.read(() -> blank(this.unit) ? Optional.empty()
				: Optional.of(Given.word("unit", this.unit, AmountUnit.class)));
		return all.give(() -> new WorkDone(when.get(), given.get().orElse(null), in.get().orElse(null),
				over.get().orElse(null), (this.note != null) ? this.note : ""));
	}

	private static Optional<Double> number(String field, @Nullable String text, String unit) {
		return blank(text) ? Optional.empty() : Optional.of(Given.number(field, text, unit));
	}

	private static boolean blank(@Nullable String text) {
		return text == null || text.isBlank();
	}

}
