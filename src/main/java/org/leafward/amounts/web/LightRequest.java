package org.leafward.amounts.web;

import io.swagger.v3.oas.annotations.Parameter;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.calculator.GivenFigures;
import org.leafward.amounts.light.HardeningRamp;
import org.leafward.amounts.light.RampLimits;
import org.leafward.amounts.light.SiteLight;
import org.leafward.amounts.light.StartingLight;
import org.leafward.climate.core.light.LightSource;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.Given;

/** A ramp as somebody asks for it; nothing is checked yet. */
record LightRequest(@Parameter(description = "degrees north", required = true) @Nullable String latitude,
		@Parameter(description = "degrees east, negative in the Americas", required = true) @Nullable String longitude,
		@Parameter(description = "m above sea level, 0 when left out") @Nullable String elevationMetres,
		@Parameter(description = "for example America/Chicago", required = true) @Nullable String zone,
		@Parameter(description = "day of setting out, year-month-day", required = true) @Nullable String date,
		@Parameter(description = "length of the ramp, 3 to 28, 14 when left out") @Nullable String days,
		@Parameter(description = "south-window, east-window, west-window, north-window, lamp, glasshouse, shade or "
				+ "unknown, which it is when left out") @Nullable String start,
		@Parameter(description = "light of the lamp at the leaves") @Nullable String level,
		@Parameter(description = "micromoles, lux or foot-candles") @Nullable String unit,
		@Parameter(description = "kind of lamp, for lux and foot-candles") @Nullable String source,
		@Parameter(description = "hours of the lamp a day") @Nullable String hours,
		@Parameter(description = "full-sun, part-sun, part-shade or shade") @Nullable String site,
		@Parameter(
				description = "coldest night that it stays out for, °C, 10 when left out") @Nullable String nightCelsius,
		@Parameter(description = "numbers of days that it had to stay in, between commas") @Nullable String held) {

	private static final int MOST_HELD = 56;

	/** An empty form with what is usual. */
	static LightRequest usual(LocalDate date) {
		return new LightRequest(null, null, null, null, date.toString(), "14", "south-window", null, "micromoles",
				"cool-white-fluorescent", "14", "full-sun", "10", null);
	}

	/** Whether somebody asked for anything. */
	boolean asked() {
		return this.latitude != null || this.longitude != null || this.date != null;
	}

	LightAnswer answer() {
		Findings all = new Findings();
		Supplier<Double> north = all.read(() -> Given.number("latitude", this.latitude, "degrees north"));
		Supplier<Double> east = all.read(() -> Given.number("longitude", this.longitude, "degrees east"));
		Supplier<Double> height = all
			.read(() -> Given.number("elevationMetres", Calculators.or(this.elevationMetres, "0"), "metres"));
		Supplier<ZoneId> clock = all.read(() -> Given.zone("zone", this.zone));
		Supplier<LocalDate> out = all.read(this::settingOut);
		Supplier<Integer> length = all
			.read(() -> Given.whole("days", Calculators.or(this.days, String.valueOf(HardeningRamp.USUAL_DAYS))));
		Supplier<StartingLight> now = all.read(this::startingLight);
		Supplier<SiteLight> there = all
			.read(() -> Given.word("site", Calculators.or(this.site, "full-sun"), SiteLight.class));
		Supplier<RampLimits> limits = all.read(() -> RampLimits
			.forNights(Given.number("nightCelsius", Calculators.or(this.nightCelsius, "10"), "°C")));
		Supplier<Set<Integer>> in = all.read(this::heldDays);
		return all.give(() -> LightAnswer.of(new GeoPoint(north.get(), east.get(), height.get()), clock.get(),
				out.get(), length.get(), now.get(), there.get(), limits.get(), in.get()));
	}

	/** What it tells of the plants; asked once there is an answer. */
	GivenFigures figures() {
		return GivenFigures.ofLight(startingLight(), settingOut());
	}

	private LocalDate settingOut() {
		LocalDate day = Given.date("date", this.date);
		if (day.getYear() < 1900 || day.getYear() > 2200) {
			throw new BadInput("%s is outside the years 1900 to 2200".formatted(day), "date",
					"give the day on which it will be set out");
		}
		return day;
	}

	private StartingLight startingLight() {
		StartingPlace place = Given.word("start", Calculators.or(this.start, "unknown"), StartingPlace.class);
		if (place != StartingPlace.LAMP) {
			return place.light();
		}
		Findings all = new Findings();
		Supplier<LampUnit> in = all
			.read(() -> Given.word("unit", Calculators.or(this.unit, "micromoles"), LampUnit.class));
		Supplier<LightSource> kind = all
			.read(() -> Given.word("source", Calculators.or(this.source, "cool-white-fluorescent"), LightSource.class));
		Supplier<Double> bright = all.read(() -> Given.number("level", this.level, "the unit beside it"));
		Supplier<Double> burning = all.read(() -> Given.number("hours", this.hours, "hours a day"));
		return all.give(() -> in.get().lamp(kind.get(), bright.get(), burning.get()));
	}

	private Set<Integer> heldDays() {
		Set<Integer> numbers = new TreeSet<>();
		for (String one : Calculators.or(this.held, "").split("[,\\s]+")) {
			if (!one.isBlank()) {
				int number = Given.whole("held", one);
				if (number < 1 || number > MOST_HELD) {
					throw new BadInput("day %d is outside 1 to %d".formatted(number, MOST_HELD), "held",
							"give the numbers of days of the ramp, such as 3, 4");
				}
				numbers.add(number);
			}
		}
		return numbers;
	}

}
