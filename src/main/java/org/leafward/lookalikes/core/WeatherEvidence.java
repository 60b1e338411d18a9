package org.leafward.lookalikes.core;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.DayWords;

/**
 * What the weather before an injury says. The thresholds are common practice, no source,
 * unless one stands beside them; a spell that can't be told for want of measurements says
 * nothing.
 */
final class WeatherEvidence {

	private static final String WEATHER = "Weather observed around the place";

	/** Dry days with wind over frozen ground that dry evergreens out. */
	private static final int DRYING_DAYS = 5;

	/** Mean wind of a day that dries, m/s (10 mph). */
	private static final double WINDY = 4.5;

	/** A day on which less falls is dry, mm. */
	private static final double DRY = 1;

	/** 90 °F; with little rain the hot dry wind of the trade's table of notes. */
	private static final double HOT = 32;

	/** A week with less rain than that leaves leaves short of water, mm (0.5 in). */
	private static final double LITTLE_RAIN = 13;

	/** A spring day that lets growth go on, °C. */
	private static final double GROWING = 13;

	/**
	 * 31 °F: new leaves are hurt (Penn State Extension gives 28 to 31 °F for buds that
	 * open).
	 */
	private static final double HURTS = -0.5;

	/** 60 °F: anthracnose is worst below (widely published). */
	private static final double COOL = 15.5;

	private static final int MILD_AT_MOST = 27;

	private final RecordFacts facts;

	private final List<RecordLine> lines = new ArrayList<>();

	private WeatherEvidence(RecordFacts facts) {
		this.facts = facts;
	}

	static List<RecordLine> of(RecordFacts facts) {
		WeatherEvidence evidence = new WeatherEvidence(facts);
		if (facts.drought() != null) {
			evidence.drought(facts.drought());
		}
		if (!facts.days().isEmpty()) {
			evidence.winter();
			evidence.heat();
			evidence.freeze();
			evidence.wetSpring();
		}
		return evidence.lines;
	}

	private void drought(RecordFacts.Drought drought) {
		Integer severity = drought.severity();
		if (severity != null && severity >= 1) {
			add("after-drought", "There was a drought by the rain up to " + DayWords.of(drought.lastDay()), true);
		}
		else if (severity == null) {
			add("after-drought", "There was no drought by the rain up to " + DayWords.of(drought.lastDay()), false);
		}
	}

	private void winter() {
		List<RecordFacts.Day> frozen = this.facts.days()
			.stream()
			.filter((one) -> Boolean.TRUE.equals(one.frozen()))
			.toList();
		List<RecordFacts.Day> drying = frozen.stream().filter(this::dries).toList();
		if (drying.size() >= DRYING_DAYS) {
			add("after-cold-wind-frozen-ground",
					"On %d dry windy days from %s to %s the ground was frozen".formatted(drying.size(),
							DayWords.of(drying.get(0).date()), DayWords.of(drying.get(drying.size() - 1).date())),
					true);
		}
		else if (frozen.isEmpty() && known(this.facts.days(), (one) -> one.frozen() != null)) {
			add("after-cold-wind-frozen-ground", "The ground was not frozen in the seven months before", false);
		}
	}

	private boolean dries(RecordFacts.Day day) {
		Double wind = day.wind();
		Double rain = day.rain();
		boolean open = this.facts.planting() != null && this.facts.planting().windy();
		return rain != null && rain < DRY && ((wind != null) ? wind >= WINDY : open);
	}

	private void heat() {
		List<RecordFacts.Day> late = last(21);
		List<RecordFacts.Day> hot = late.stream()
			.filter((one) -> one.maximum() != null && one.maximum() >= HOT && rainBefore(one.date(), 7) < LITTLE_RAIN)
			.toList();
		if (hot.size() >= 2) {
			add("after-hot-dry-wind", "On %d days up to %s it was 32 °C (90 °F) or more, with hardly any rain"
				.formatted(hot.size(), DayWords.of(hot.get(hot.size() - 1).date())), true);
		}
		else if (known(late, (one) -> one.maximum() != null)
				&& late.stream().allMatch((one) -> one.maximum() == null || one.maximum() <= MILD_AT_MOST)) {
			add("after-hot-dry-wind", "It was never above 27 °C (81 °F) in the three weeks before", false);
		}
	}

	/** Of the days before, the coldest night that met growth. */
	private void freeze() {
		List<RecordFacts.Day> late = last(21);
		RecordFacts.Day worst = null;
		for (RecordFacts.Day day : late) {
			Double low = day.minimum();
			if (low != null && low <= HURTS && growing(day.date())
					&& (worst == null || low < number(worst.minimum()))) {
				worst = day;
			}
		}
		if (worst != null) {
			double low = number(worst.minimum());
			add("after-freeze-on-growth", "It froze to %s °C (%s °F) on %s, after warm days".formatted(figure(low),
					figure(low * 1.8 + 32), DayWords.of(worst.date())), true);
		}
		else if (known(late, (one) -> one.minimum() != null)
				&& late.stream().allMatch((one) -> one.minimum() == null || one.minimum() > 1)) {
			add("after-freeze-on-growth", "It did not freeze in the three weeks before", false);
		}
	}

	/** Warm days before: ten of the three weeks, so that buds had begun to move. */
	private boolean growing(LocalDate day) {
		return between(day.minusDays(21), day.minusDays(1)).stream()
			.filter((one) -> one.maximum() != null && one.maximum() >= GROWING)
			.count() >= 10;
	}

	private void wetSpring() {
		int month = this.facts.south() ? this.facts.seen().getMonth().plus(6).getValue()
				: this.facts.seen().getMonthValue();
		List<RecordFacts.Day> days = last(35);
		if (month < 4 || month > 7 || !known(days, (one) -> one.rain() != null && one.maximum() != null)) {
			return;
		}
		long wet = days.stream().filter((one) -> one.rain() != null && one.rain() >= 2.5).count();
		double mean = mean(days, (one) -> (number(one.minimum()) + number(one.maximum())) / 2);
		if (wet >= 12 && mean <= COOL) {
			add("after-cool-wet-spring", "Of the 35 days before %d were wet, with a mean of %s °C (%s °F)"
				.formatted(wet, figure(mean), figure(mean * 1.8 + 32)), true);
		}
		else if (wet <= 6) {
			add("after-cool-wet-spring", "Of the 35 days before only %d were wet".formatted(wet), false);
		}
	}

	private static double mean(List<RecordFacts.Day> days, ToDoubleFunction<RecordFacts.Day> value) {
		return days.stream()
			.filter((one) -> one.minimum() != null && one.maximum() != null)
			.mapToDouble(value)
			.average()
			.orElse(Double.NaN);
	}

	private double rainBefore(LocalDate day, int days) {
		return between(day.minusDays(days), day.minusDays(1)).stream()
			.mapToDouble((one) -> (one.rain() != null) ? one.rain() : 0)
			.sum();
	}

	private List<RecordFacts.Day> last(int days) {
		return between(this.facts.seen().minusDays(days), this.facts.seen());
	}

	private List<RecordFacts.Day> between(LocalDate from, LocalDate to) {
		return this.facts.days()
			.stream()
			.filter((one) -> !one.date().isBefore(from) && !one.date().isAfter(to))
			.toList();
	}

	/** At least nine in ten days, so that what was not seen did not happen. */
	private static boolean known(List<RecordFacts.Day> days, Predicate<RecordFacts.Day> measured) {
		return !days.isEmpty() && days.stream().filter(measured).count() * 10 >= days.size() * 9L;
	}

	private static double number(@Nullable Double value) {
		return (value != null) ? value : Double.NaN;
	}

	private static String figure(double value) {
		return String.format(Locale.ROOT, "%.0f", value).replace("-0", "0").replace('-', '\u2212');
	}

	private void add(String evidence, String words, boolean present) {
		this.lines
			.add(RecordLine.of("weather-" + evidence, RecordLine.Kind.WEATHER, words, WEATHER, evidence, present));
	}

}
