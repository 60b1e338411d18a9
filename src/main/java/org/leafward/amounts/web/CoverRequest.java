package org.leafward.amounts.web;

import io.swagger.v3.oas.annotations.Parameter;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.Degrees;
import org.leafward.amounts.cover.Cover;
import org.leafward.amounts.cover.CoverTonight;
import org.leafward.amounts.cover.NightSky;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;

/** A night as somebody asks about it; nothing is checked yet. */
record CoverRequest(@Parameter(description = "lowest temperature forecast", required = true) @Nullable String forecast,
		@Parameter(description = "temperature at which the plant is hurt", required = true) @Nullable String hurt,
		@Parameter(description = "how much warmer the site is than the place of the forecast, negative when colder, "
				+ "0 when left out") @Nullable String offset,
		@Parameter(description = "celsius, which it is when left out, or fahrenheit") @Nullable String unit,
		@Parameter(description = "clear-and-calm, cloudy-or-windy or unknown") @Nullable String sky,
		@Parameter(description = "cover at hand, any when left out") @Nullable String have) {

	static final String ANY = "any";

	/** In what temperatures are given. */
	enum Unit {

		CELSIUS, FAHRENHEIT;

		double temperature(double given) {
			return (this == CELSIUS) ? given : Degrees.ofFahrenheit(given);
		}

		double difference(double given) {
			return (this == CELSIUS) ? given : Degrees.differenceOfFahrenheit(given);
		}

	}

	static CoverRequest usual() {
		return new CoverRequest(null, null, "0", "fahrenheit", "unknown", ANY);
	}

	boolean asked() {
		return this.forecast != null || this.hurt != null;
	}

	CoverTonight answer() {
		Findings all = new Findings();
		Supplier<Double> low = all.read(() -> Given.number("forecast", this.forecast, "degrees"));
		Supplier<Double> harm = all.read(() -> Given.number("hurt", this.hurt, "degrees"));
		Supplier<Double> warmer = all.read(() -> Given.number("offset", Calculators.or(this.offset, "0"), "degrees"));
		Supplier<Unit> in = all.read(() -> Given.word("unit", Calculators.or(this.unit, "celsius"), Unit.class));
		Supplier<NightSky> night = all
			.read(() -> Given.word("sky", Calculators.or(this.sky, "unknown"), NightSky.class));
		Supplier<Set<Cover>> covers = all.read(this::covers);
		return all.give(() -> CoverTonight.judge(in.get().temperature(low.get()), in.get().difference(warmer.get()),
				night.get(), in.get().temperature(harm.get()), covers.get()));
	}

	private Set<Cover> covers() {
		return Calculators.or(this.have, ANY).toLowerCase(Locale.ROOT).equals(ANY) ? EnumSet.allOf(Cover.class)
				: EnumSet.of(Given.word("have", this.have, Cover.class));
	}

}
