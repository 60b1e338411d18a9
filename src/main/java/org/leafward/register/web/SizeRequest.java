package org.leafward.register.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.Dimension;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.register.Planting;
import org.leafward.register.PlantingSize;
import org.leafward.register.Raised;
import org.leafward.register.RaisedIn;

/**
 * How large a planting is and where it stands before it goes out, as somebody gives it;
 * nothing is checked yet. What is empty isn't known.
 *
 * @param area of the bed or above the roots, m² or with its unit
 * @param calliper thickness of one trunk, mm or with its unit
 * @param pot volume of one pot, l or with its unit
 * @param raisedIn where it stands before it goes out
 * @param lampMicromoles light of the lamps, µmol/m²s
 * @param lampHours hours a day that the lamps are on
 */
record SizeRequest(@Schema(types = {
		"number", "string" }, description = "in square metres, or with its unit",
		example = "130 sq ft") @Nullable String area,
		@Schema(types = { "number", "string" }, description = "of one trunk, in millimetres, or with its unit",
				example = "2 in") @Nullable String calliper,
		@Schema(types = { "number", "string" }, description = "of one pot, in litres, or with its unit",
				example = "5 gal") @Nullable String pot,
		@Schema(allowableValues = { "midday-window", "morning-window", "afternoon-window", "sunless-window", "lamps",
				"greenhouse" }) @Nullable String raisedIn,
		@Schema(types = "number", minimum = "1", maximum = "2500") @Nullable String lampMicromoles,
		@Schema(types = "number", minimum = "0", maximum = "24") @Nullable String lampHours){

	/** Nothing is known. */
	static final SizeRequest UNKNOWN = new SizeRequest(null, null, null, null, null, null);

	static SizeRequest of(Planting planting) {
		PlantingSize size = planting.size();
		Raised raised = planting.raised();
		return new SizeRequest(written(size.squareMetres()), written(size.calliperMillimetres()),
				written(size.potLitres()), (raised != null) ? SiteAnswer.word(raised.in()) : "",
				written((raised != null) ? raised.micromoles() : null),
				written((raised != null) ? raised.hours() : null));
	}

	/** As people write it: the unit is the one that the form asks for. */
	static String written(@Nullable Double value) {
		return (value != null)
				? BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString() : "";
	}

	/**
	 * What was given, checked.
	 *
	 * @param size how large it is
	 * @param raised where it stands before it goes out; null when nobody told
	 */
	record Read(PlantingSize size, @Nullable Raised raised) {
	}

	Read read() {
		Findings all = new Findings();
		Supplier<Optional<Double>> bed = all.read(() -> quantity(Dimension.AREA, "area", this.area));
		Supplier<Optional<Double>> trunk = all.read(() -> quantity(Dimension.THICKNESS, "calliper", this.calliper));
		Supplier<Optional<Double>> volume = all.read(() -> quantity(Dimension.VOLUME, "pot", this.pot));
		Supplier<Optional<Raised>> light = all.read(this::raised);
		return all.give(() -> new Read(
				new PlantingSize(bed.get().orElse(null), trunk.get().orElse(null), volume.get().orElse(null)),
				light.get().orElse(null)));
	}

	static Optional<Double> quantity(Dimension dimension, String field, @Nullable String given) {
		return (given == null || given.isBlank()) ? Optional.empty() : Optional.of(dimension.read(field, given));
	}

	private Optional<Raised> raised() {
		if (this.raisedIn == null || this.raisedIn.isBlank()) {
			return Optional.empty();
		}
		Findings all = new Findings();
		Supplier<RaisedIn> in = all.read(() -> Given.word("raisedIn", this.raisedIn, RaisedIn.class));
		Supplier<Optional<Double>> flux = all.read(() -> number("lampMicromoles", this.lampMicromoles, "µmol/m²s"));
		Supplier<Optional<Double>> hours = all.read(() -> number("lampHours", this.lampHours, "hours a day"));
		return Optional.of(all.give(() -> new Raised(in.get(), flux.get().orElse(null), hours.get().orElse(null))));
	}

	private static Optional<Double> number(String field, @Nullable String given, String unit) {
		return (given == null || given.isBlank()) ? Optional.empty() : Optional.of(Given.number(field, given, unit));
	}

}
