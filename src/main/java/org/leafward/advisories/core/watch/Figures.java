package org.leafward.advisories.core.watch;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.GroundReading;
import org.leafward.climate.PlaceDay;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.climate.WaterView;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;

/**
 * Works out the figures of a scene. What is not known is null, never a number that would
 * do.
 */
final class Figures {

	/** Of a spell of days so many may be missing; our choice. */
	private static final double MISSING_PART = 0.1;

	/** Days on which snow that nobody measured would show in rain and frost. */
	private static final int SNOW_DAYS = 21;

	/** A reading of snow is good for so many days. */
	private static final int SNOW_READING = 3;

	private static final MonthDay MIDSUMMER = MonthDay.of(7, 15);

	private static final MonthDay WINTER = MonthDay.of(11, 1);

	private static final int HALF_YEAR = 6;

	private final Scene scene;

	private final @Nullable Stages stages;

	Figures(Scene scene, @Nullable Stages stages) {
		this.scene = scene;
		this.stages = stages;
	}

	/** A figure that belongs to no forecast day. */
	@Nullable Double of(FigureSpec spec) {
		return switch (spec.kind()) {
			case ROOT_ZONE_USED -> rootZoneUsed();
			case GROUND_FROZEN -> frozen();
			case RAIN_PAST -> rainPast(spec.days());
			case RAIN_AHEAD -> rainAhead(spec.days());
			case SNOW_DEPTH -> snowDepth();
			case SOIL -> mean(spec.days(), PlaceDay::soil);
			case UPPER_SOIL -> mean(spec.days(), PlaceDay::upperSoil);
			case DEGREE_DAYS ->
				degreeDays(Objects.requireNonNull(spec.base()), Objects.requireNonNull(spec.start()), today());
			case DULL_DAYS -> dullDays(spec.dull());
			case COLDEST_SINCE_SUMMER -> coldest();
			case ICY_DAYS -> icyDays();
			case SINCE_ICY -> sinceIcy();
			case DAYS_TO -> daysTo(spec);
			case LOW, HIGH, WIND, HUMIDITY, RAIN, LIGHT, KILL_MARGIN ->
				throw new IllegalStateException("a figure of a day: " + spec.kind());
		};
	}

	/** A figure of a forecast day; the others are those of today. */
	@Nullable Double of(FigureSpec spec, PlaceDay day) {
		return switch (spec.kind()) {
			case LOW -> day.minimum();
			case HIGH -> day.maximum();
			case WIND -> day.wind();
			case HUMIDITY -> day.lowestHumidity();
			case RAIN -> day.rain();
			case LIGHT -> light(day);
			case KILL_MARGIN -> killMargin(day);
			default -> of(spec);
		};
	}

	private LocalDate today() {
		return this.scene.today();
	}

	private List<PlaceDay> observed() {
		return this.scene.now().observed();
	}

	private @Nullable Double light(PlaceDay day) {
		return DayLight.share(day, this.scene.now().point().latitude(), this.scene.now().point().elevationMetres());
	}

	/**
	 * Rain that nobody measured counts as none there, so dry soil is only sure without.
	 */
	private @Nullable Double rootZoneUsed() {
		WaterView water = this.scene.now().water();
		if (water == null || !water.days().stream().allMatch(WaterView.Day::complete)) {
			return null;
		}
		WaterView.Day last = water.days().get(water.days().size() - 1);
		return 100 * last.depletion() / last.readily();
	}

	private @Nullable Double frozen() {
		GroundReading ground = this.scene.now().ground();
		return (ground != null) ? (ground.frozen() ? 1.0 : 0.0) : null;
	}

	private List<PlaceDay> last(int days) {
		List<PlaceDay> all = observed();
		return all.subList(Math.max(0, all.size() - days), all.size());
	}

	private @Nullable Double rainPast(int days) {
		List<PlaceDay> last = last(days);
		return (last.size() == days) ? sum(last) : null;
	}

	private @Nullable Double rainAhead(int days) {
		List<PlaceDay> ahead = this.scene.now()
			.forecast()
			.stream()
			.filter((day) -> day.day().isBefore(today().plusDays(days)))
			.toList();
		return (ahead.size() == days) ? sum(ahead) : null;
	}

	private static @Nullable Double sum(List<PlaceDay> days) {
		double sum = 0;
		for (PlaceDay day : days) {
			if (day.rain() == null) {
				return null;
			}
			sum += day.rain();
		}
		return sum;
	}

	/**
	 * As it was measured of late. Where nobody does, there is none when nothing fell in
	 * frost for three weeks.
	 */
	private @Nullable Double snowDepth() {
		List<PlaceDay> reading = last(SNOW_READING);
		for (int at = reading.size() - 1; at >= 0; at--) {
			if (reading.get(at).snowDepth() != null) {
				return reading.get(at).snowDepth();
			}
		}
		List<PlaceDay> weeks = last(SNOW_DAYS);
		boolean none = weeks.size() == SNOW_DAYS && weeks.stream()
			.allMatch((day) -> day.rain() != null && day.minimum() != null && (day.rain() < 1 || day.minimum() > 1));
		return none ? 0.0 : null;
	}

	private @Nullable Double mean(int days, Function<PlaceDay, @Nullable Double> figure) {
		List<PlaceDay> last = last(days);
		double sum = 0;
		for (PlaceDay day : last) {
			Double value = figure.apply(day);
			if (value == null) {
				return null;
			}
			sum += value;
		}
		return (last.size() == days) ? sum / days : null;
	}

	private LocalDate latest(MonthDay north) {
		LocalDate day = (this.scene.south() ? north.atYear(today().getYear()).plusMonths(HALF_YEAR)
				: north.atYear(today().getYear()));
		while (day.isAfter(today())) {
			day = day.minusYears(1);
		}
		return day;
	}

	/**
	 * Degree-days from a first day to the day before another, observed and then forecast;
	 * the mean of minimum and maximum above the base. Single missing days count as the
	 * mean of the others.
	 */
	@Nullable Double degreeDays(TemperatureThreshold base, MonthDay start, LocalDate before) {
		LocalDate from = latest(start);
		double sum = 0;
		int known = 0;
		long days = ChronoUnit.DAYS.between(from, before);
		for (PlaceDay day : observed()) {
			if (!day.day().isBefore(from) && day.day().isBefore(before) && day.minimum() != null
					&& day.maximum() != null) {
				sum += heat(day, base);
				known++;
			}
		}
		for (PlaceDay day : this.scene.now().forecast()) {
			if (day.day().isBefore(before) && day.minimum() != null && day.maximum() != null) {
				sum += heat(day, base);
				known++;
			}
		}
		if (days <= 0) {
			return 0.0;
		}
		return (known >= (1 - MISSING_PART) * days) ? sum * days / known : null;
	}

	private static double heat(PlaceDay day, TemperatureThreshold base) {
		double above = (Objects.requireNonNull(day.minimum()) + Objects.requireNonNull(day.maximum())) / 2
				- base.celsius();
		return Math.max(0, above) * (base.fahrenheit() ? 1.8 : 1);
	}

	private @Nullable Double dullDays(double share) {
		int dull = 0;
		for (int at = observed().size() - 1; at >= 0; at--) {
			Double light = light(observed().get(at));
			if (light == null) {
				return (dull > 0) ? (double) dull : null;
			}
			if (light > share) {
				break;
			}
			dull++;
		}
		return (double) dull;
	}

	private @Nullable Double coldest() {
		LocalDate from = latest(MIDSUMMER);
		double coldest = Double.POSITIVE_INFINITY;
		int known = 0;
		for (PlaceDay day : observed()) {
			if (!day.day().isBefore(from) && day.minimum() != null) {
				coldest = Math.min(coldest, day.minimum());
				known++;
			}
		}
		long days = Math.min(observed().size(), ChronoUnit.DAYS.between(from, today()));
		return (known > 0 && known >= (1 - MISSING_PART) * days) ? coldest : null;
	}

	private static boolean icy(PlaceDay day) {
		return day.minimum() != null && day.rain() != null && day.minimum() <= 0 && day.rain() >= 1;
	}

	private @Nullable Double sinceIcy() {
		for (int at = observed().size() - 1; at >= 0; at--) {
			PlaceDay day = observed().get(at);
			if (day.minimum() == null || day.rain() == null) {
				return null;
			}
			if (icy(day)) {
				return (double) ChronoUnit.DAYS.between(day.day(), today());
			}
		}
		return (double) observed().size();
	}

	private @Nullable Double icyDays() {
		LocalDate from = latest(WINTER);
		int icy = 0;
		int known = 0;
		for (PlaceDay day : observed()) {
			if (!day.day().isBefore(from) && day.minimum() != null && day.rain() != null) {
				known++;
				icy += icy(day) ? 1 : 0;
			}
		}
		long days = Math.min(observed().size(), ChronoUnit.DAYS.between(from, today()));
		return (known >= (1 - MISSING_PART) * days) ? (double) icy : null;
	}

	private @Nullable Double daysTo(FigureSpec spec) {
		int season = Season.containing(today(), hemisphere()).year();
		return this.scene.markers()
			.on(Objects.requireNonNull(spec.marker()), season)
			.map((date) -> (double) ChronoUnit.DAYS.between(today(), date))
			.orElse(null);
	}

	Hemisphere hemisphere() {
		return this.scene.south() ? Hemisphere.SOUTH : Hemisphere.NORTH;
	}

	/** The crops whose buds a low comes near to killing, the nearest first. */
	List<BudRisk> risks(PlaceDay day) {
		Stages known = Objects.requireNonNull(this.stages);
		Double sum = degreeDays(known.base(), known.start(), day.day());
		return (sum != null && day.minimum() != null) ? BudRisk.of(known, sum, day.minimum()) : List.of();
	}

	private @Nullable Double killMargin(PlaceDay day) {
		List<BudRisk> risks = risks(day);
		return risks.isEmpty() ? null : risks.get(0).margin();
	}

}
