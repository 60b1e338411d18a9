package org.leafward.register.web;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.ChillSoFar;
import org.leafward.climate.HeatSoFar;
import org.leafward.climate.SeasonView;
import org.leafward.climate.StationForecast;
import org.leafward.climate.WaterView;
import org.leafward.pages.Formats;

/** Sentences about the weather of a site. */
final class WeatherWords {

	static final String NO_STATION = "No weather station with a record of ten seasons or more is known within 150 km, so "
			+ "what is normal here isn't known.";

	private final Formats formats;

	WeatherWords(Formats formats) {
		this.formats = formats;
	}

	/** What matters now. */
	String lead(@Nullable SeasonView view, @Nullable WaterView water) {
		String soil = (water != null) ? " " + soil(water) : "";
		if (view == null) {
			return NO_STATION + soil;
		}
		HeatSoFar.Sum latest = view.heat().latest();
		if (view.recordEnd() != null) {
			return view.recordEnd();
		}
		if (latest == null) {
			return "Heat is counted from %s; no day since then has been observed yet."
				.formatted(this.formats.dayOfYear(view.heat().from())) + soil;
		}
		return "%s degree-days so far, %s.".formatted(this.formats.number(latest.sum(), 0),
				against(view.heat(), latest)) + soil;
	}

	private String against(HeatSoFar heat, HeatSoFar.Sum latest) {
		Integer ahead = heat.aheadDays();
		if (ahead != null) {
			return (ahead == 0) ? "just as in a normal year" : this.formats.count(Math.abs(ahead), "day", "days")
					+ ((ahead > 0) ? " ahead of normal" : " behind normal");
		}
		HeatSoFar.Normal normal = heat.normalOn(latest.day());
		if (normal == null) {
			return "and what is normal isn't known";
		}
		double more = latest.sum() - normal.middle();
		return "%s %s than normal by this day".formatted(this.formats.number(Math.abs(more), 0),
				(more >= 0) ? "more" : "fewer");
	}

	private String soil(WaterView water) {
		WaterView.Day last = water.days().get(water.days().size() - 1);
		String left = "%s of %s mm of water".formatted(
				this.formats.number(Math.max(0, water.availableMillimetres() - last.depletion()), 0),
				this.formats.number(water.availableMillimetres(), 0));
		if (last.stressed()) {
			return "A bed here is dry: %s are left for plants.".formatted(left);
		}
		return last.wetEnough() ? "The soil is wet enough: it holds %s.".formatted(left)
				: "The soil holds %s for plants.".formatted(left);
	}

	/** What was watered and when it was due, in the days of the picture. */
	List<String> water(WaterView water) {
		List<WaterView.Day> watered = water.days().stream().filter((day) -> day.watering() > 0).toList();
		List<String> due = water.days()
			.stream()
			.filter(WaterView.Day::due)
			.map((day) -> this.formats.dayOfYear(day.date()))
			.toList();
		List<String> words = new ArrayList<>();
		words.add(watered.isEmpty() ? "No watering of this bed is recorded in these days."
				: "In these days %s of water were given, on %s.".formatted(
						WateringPart.amount(watered.stream().mapToDouble(WaterView.Day::watering).sum(), this.formats),
						this.formats.count(watered.size(), "day", "days")));
		words.add(due.isEmpty() ? "Watering never became due."
				: "Watering became due on %s: that evening the plants had used up the water they can take without stress."
					.formatted(list(due)));
		if (water.days().get(water.days().size() - 1).stressed()) {
			words.add("It is due now.");
		}
		return words;
	}

	private static String list(List<String> words) {
		int last = words.size() - 1;
		return (last == 0) ? words.get(0) : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
	}

	/** What other stations would have said, or null. */
	@Nullable String around(SeasonView view) {
		HeatSoFar.Sum latest = view.heat().latest();
		if (latest == null || view.around().isEmpty()) {
			return null;
		}
		String others = list(view.around()
			.stream()
			.map((one) -> "%s, %s km away, %s".formatted(one.station().name(), this.formats.number(one.distance(), 0),
					(one.sum() != null) ? this.formats.number(one.sum(), 0) : "no sum, for days are missing"))
			.toList());
		return "How far to trust the sum: from %s it is %s by %s. Moved to this place by the same rules, other stations would give: %s."
			.formatted(view.station().name(), this.formats.number(latest.sum(), 0),
					this.formats.dayOfYear(latest.day()), others);
	}

	/** When some sums come. */
	List<String> goals(HeatSoFar heat) {
		List<String> words = new ArrayList<>();
		for (HeatSoFar.Goal goal : heat.goals()) {
			String usual = (goal.usual() != null) ? "; usual: " + this.formats.dayOfYear(goal.usual()) : "";
			words.add(this.formats.number(goal.sum(), 0) + ": " + date(goal) + usual);
		}
		return words;
	}

	private String date(HeatSoFar.Goal goal) {
		if (goal.date() == null) {
			return "not to be told";
		}
		String day = this.formats.dayOfYear(goal.date());
		return switch (goal.basis()) {
			case OBSERVED -> "reached on " + day;
			case FORECAST -> "expected on %s by the forecast".formatted(day);
			case NORMAL -> "expected on %s".formatted(day) + ((goal.early() != null && goal.late() != null)
					? " (eight years in ten: %s)".formatted(this.formats.window(goal.early(), goal.late())) : "");
			case UNKNOWN -> "not to be told";
		};
	}

	/** The winter in words. */
	List<String> chill(ChillSoFar chill) {
		List<String> words = new ArrayList<>();
		String days = this.formats.window(chill.from(), chill.end());
		if (chill.missing() != null) {
			words.add(chill.missing());
		}
		if (chill.observed() != null && chill.until() != null) {
			words.add("Winter %s, counted up to %s.".formatted(days, this.formats.dayOfYear(chill.until())));
		}
		return words;
	}

	/** A row for each measure of chill. */
	List<ChillRow> chillRows(ChillSoFar chill) {
		return List.of(row("hours from 32 to 45 °F", chill, ChillSoFar.Chill::hours),
				row("Utah units", chill, ChillSoFar.Chill::utah),
				row("portions of the dynamic model", chill, ChillSoFar.Chill::portions));
	}

	private ChillRow row(String what, ChillSoFar chill, ToDoubleFunction<ChillSoFar.Chill> value) {
		return new ChillRow(what, number(chill.observed(), value), number(chill.normalSoFar(), value),
				number(chill.normalWhole(), value));
	}

	private String number(ChillSoFar.@Nullable Chill chill, ToDoubleFunction<ChillSoFar.Chill> value) {
		return (chill == null) ? "not known" : this.formats.number(value.applyAsDouble(chill), 0);
	}

	/**
	 * A measure of chill.
	 *
	 * @param what its name
	 * @param soFar this winter
	 * @param normal median of past winters by the same day
	 * @param whole median of whole past winters
	 */
	record ChillRow(String what, String soFar, String normal, String whole) {
	}

	/** How old the forecast is. */
	String forecast(SeasonView view, StationForecast forecast, Instant now) {
		long hours = Duration.between(forecast.issuedAt(), now).toHours();
		String age = (hours < 1) ? "less than an hour" : (hours < 48) ? this.formats.count(hours, "hour", "hours")
				: this.formats.count(hours / 24, "day", "days");
		return String.format(Locale.ROOT, "The forecast for %s was made %s ago%s%s.", view.station().name(), age,
				view.station().invented() ? " and is invented, like the station" : "",
				forecast.stale() ? "; it is too old to lean on" : "");
	}

}
