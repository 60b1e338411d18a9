package org.leafward.register.web;

import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.media.Schema.RequiredMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Dimension;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.pages.Choice;
import org.leafward.register.Bed;
import org.leafward.register.BedId;
import org.leafward.register.NewBed;
import org.leafward.register.Sun;
import org.leafward.register.Wind;

/**
 * A bed as somebody gives it, in a form or as JSON; nothing is checked yet. What is empty
 * is as at the site.
 *
 * @param name what its people call it
 * @param sun its own light
 * @param wind its own exposure to wind
 * @param flow what its own hose or line gives, l/min or with its unit
 */
record BedForm(@Schema(requiredMode = RequiredMode.REQUIRED, maxLength = NewBed.LONGEST_NAME) @Nullable String name,
		@Schema(allowableValues = {
				"full-sun", "part-shade", "shade" }) @Nullable String sun,
		@Schema(allowableValues = { "sheltered", "average", "exposed" }) @Nullable String wind,
		@Schema(types = { "number", "string" }, example = "3 gal/min") @Nullable String flow){

	static final BedForm EMPTY = new BedForm("", "", "", "");

	static BedForm of(Bed bed) {
		return new BedForm(bed.name(), (bed.sun() != null) ? SiteAnswer.word(bed.sun()) : "",
				(bed.wind() != null) ? SiteAnswer.word(bed.wind()) : "", SizeRequest.written(bed.litresPerMinute()));
	}

	NewBed toBed() {
		Findings all = new Findings();
		Supplier<String> called = all.read(() -> Given.text("name", this.name));
		Supplier<Optional<Sun>> light = all.read(() -> own("sun", this.sun, Sun.class));
		Supplier<Optional<Wind>> air = all.read(() -> own("wind", this.wind, Wind.class));
		Supplier<Optional<Double>> water = all.read(() -> SizeRequest.quantity(Dimension.FLOW, "flow", this.flow));
		return all.give(() -> new NewBed(called.get(), light.get().orElse(null), air.get().orElse(null),
				water.get().orElse(null)));
	}

	private static <E extends Enum<E>> Optional<E> own(String field, @Nullable String given, Class<E> kind) {
		return (given == null || given.isBlank()) ? Optional.empty() : Optional.of(Given.word(field, given, kind));
	}

	/** Nothing stands for no bed. */
	static Optional<BedId> id(String field, @Nullable String text) {
		try {
			return (text == null || text.isBlank()) ? Optional.empty()
					: Optional.of(new BedId(UUID.fromString(text.strip())));
		}
		catch (IllegalArgumentException ex) {
			throw new BadInput("'%s' is not a bed of this site".formatted(text), field,
					"choose one of its beds, or none");
		}
	}

	/** Beds to choose from, none first. */
	static List<Choice> choices(List<Bed> beds) {
		List<Choice> all = new ArrayList<>(List.of(new Choice("", "no bed of its own")));
		beds.forEach((bed) -> all.add(new Choice(bed.id().toString(), bed.name())));
		return all;
	}

}
