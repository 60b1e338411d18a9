package org.leafward.climate.core.season;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Month;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.PlaceFacts;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.Sample;
import org.leafward.climate.core.SeasonPeriod;
import org.leafward.climate.core.extreme.ExtremeMinimum;
import org.leafward.climate.core.extreme.HardinessZone;
import org.leafward.climate.core.light.DailyLight;
import org.leafward.climate.core.light.SunPosition;
import org.leafward.climate.core.water.NearStation;
import org.leafward.climate.core.water.Radiation;
import org.leafward.climate.core.water.Setting;
import org.leafward.climate.core.water.SunGeometry;
import org.leafward.measure.Explanation;
import org.leafward.measure.GeoPoint;

/** Works out the figures of a place. */
public final class PlaceFigures {

	/** Until when light counts as that of the morning. */
	public static final LocalTime MORNING_ENDS = LocalTime.of(10, 30);

	private static final int MIDDLE = 15;

	/** Days that a month must have in all years together to have a mean. */
	private static final int FEWEST_DAYS = 28 * Sample.FEWEST_SEASONS / 2;

	private PlaceFigures() {
	}

	/**
	 * The figures.
	 * @param place the place with its height
	 * @param today the day
	 * @param zone whose clock
	 * @param near the station that speaks for the place, or null
	 * @param normals the seasons of its record that are used, or null
	 * @return the figures
	 */
	public static PlaceFacts of(GeoPoint place, LocalDate today, ZoneId zone, @Nullable NearStation near,
			@Nullable SeasonPeriod normals) {
		SunPosition.Day sun = SunPosition.day(place, today, zone);
		LocalTime rise = (sun.rise() != null) ? sun.rise().toLocalTime().truncatedTo(ChronoUnit.MINUTES) : null;
		LocalTime set = (sun.set() != null) ? sun.set().toLocalTime().truncatedTo(ChronoUnit.MINUTES) : null;
		Long length = (rise != null && set != null && set.isAfter(rise)) ? Duration.between(rise, set).toMinutes()
				: null;
		Optional<ExtremeMinimum> extreme = (near == null || normals == null) ? Optional.empty()
				: ExtremeMinimum.of(near.climate().record(), normals, ExtremeMinimum.Years.WINTERS, place.hemisphere());
		double colderBy = (near != null) ? near.colderBy() : 0;
		Optional<HardinessZone> half = extreme.flatMap((found) -> found.zone(colderBy));
		return new PlaceFacts(extreme.map((found) -> found.celsius() - colderBy).orElse(null),
				half.map(HardinessZone::code).orElse(null), why(near, extreme.isPresent(), half.isPresent()), length,
				rise, set, words(sun, rise, set, length), light(place, today.getYear(), zone, near, normals),
				explanation(near, extreme.orElse(null), colderBy));
	}

	private static @Nullable String why(@Nullable NearStation near, boolean extreme, boolean zone) {
		if (near == null) {
			return "No station within 150 km has a record of ten seasons.";
		}
		if (!extreme) {
			return "Fewer than ten winters of the record are complete enough.";
		}
		return zone ? null : "It lies outside the zones.";
	}

	private static String words(SunPosition.Day sun, @Nullable LocalTime rise, @Nullable LocalTime set,
			@Nullable Long minutes) {
		if (sun.alwaysUp()) {
			return "The sun stays up all day.";
		}
		if (sun.alwaysDown()) {
			return "The sun stays down all day.";
		}
		return (minutes == null) ? "Sunrise at %s, sunset at %s.".formatted((rise != null) ? rise : "no time", set)
				: "From %s to %s, %d h %02d min.".formatted(rise, set, minutes / 60, minutes % 60);
	}

	private static List<PlaceFacts.MonthLight> light(GeoPoint place, int year, ZoneId zone, @Nullable NearStation near,
			@Nullable SeasonPeriod normals) {
		double[] typical = typical(place, near, normals);
		List<PlaceFacts.MonthLight> months = new ArrayList<>();
		for (Month month : Month.values()) {
			LocalDate middle = LocalDate.of(year, month, MIDDLE);
			double clear = DailyLight.clearSky(place, middle);
			double mean = typical[month.ordinal()];
			double part = DailyLight.part(place, middle, zone, null, MORNING_ENDS);
			months.add(new PlaceFacts.MonthLight(month, clear, Double.isNaN(mean) ? null : mean,
					part * (Double.isNaN(mean) ? clear : mean)));
		}
		return months;
	}

	private static double[] typical(GeoPoint place, @Nullable NearStation near, @Nullable SeasonPeriod normals) {
		double[] sums = new double[12];
		int[] counts = new int[12];
		if (near != null && normals != null) {
			LocalDate end = LocalDate.of(normals.to(), Month.DECEMBER, 31);
			for (LocalDate day = LocalDate.of(normals.from(), 1, 1); !day.isAfter(end); day = day.plusDays(1)) {
				short low = near.climate().record().value(Element.TMIN, day);
				short high = near.climate().record().value(Element.TMAX, day);
				if (low != DailyRecord.MISSING && high != DailyRecord.MISSING) {
					double above = SunGeometry.extraterrestrial(place.latitude(), day.getDayOfYear());
					sums[day.getMonthValue() - 1] += DailyLight.ofRadiation(Radiation.fromTemperatures(low / 10.0,
							high / 10.0, above, Radiation.clearSky(above, place.elevationMetres()), Setting.INTERIOR));
					counts[day.getMonthValue() - 1]++;
				}
			}
		}
		double[] means = new double[12];
		for (int i = 0; i < means.length; i++) {
			means[i] = (counts[i] < FEWEST_DAYS) ? Double.NaN : sums[i] / counts[i];
		}
		return means;
	}

	private static Explanation explanation(@Nullable NearStation near, @Nullable ExtremeMinimum extreme,
			double colderBy) {
		List<Explanation> steps = new ArrayList<>();
		if (near != null && extreme != null) {
			steps.add(Explanation
				.of("Lowest minimum of a winter, mean",
						String.format(Locale.ROOT, "%.1f °C at %s", extreme.celsius(), near.climate().station().name()))
				.withDetail(String.format(Locale.ROOT,
						"%d winters used, %d left out; the lowest of all was %.1f °C. The place is %.1f °C %s for its height.",
						extreme.years(), extreme.leftOut(), extreme.lowest(), Math.abs(colderBy),
						(colderBy >= 0) ? "colder" : "warmer"))
				.withSource("bands of the USDA Plant Hardiness Zone Map, 5 °F each; winters, not calendar years"));
		}
		steps.add(Explanation.of("Clear sky", "radiation above the atmosphere and the height of the place")
			.withSource("FAO Irrigation and Drainage Paper 56, equations 21 and 37"));
		steps.add(Explanation.of("Typical light", "radiation from the daily range of temperature")
			.withDetail("0.45 of it is light that plants use, 4.57 µmol per joule.")
			.withSource("FAO Irrigation and Drainage Paper 56, equation 50; Faust and Logan (2018)"));
		steps.add(Explanation.of("Morning", "until 10:30 by the clock, shared out like the light above the atmosphere")
			.withDetail("Over a level horizon; trees, walls and hills take their part away.")
			.withSource("FAO Irrigation and Drainage Paper 56, equation 28"));
		return new Explanation("How these figures came about", "estimates", null, null, steps);
	}

}
