package org.leafward.climate.core.drought;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.leafward.climate.DroughtReading;
import org.leafward.climate.Station;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;

/**
 * Reads the drought off a station's record: 90 days of rain against the same days of all
 * years before.
 */
public final class StationDrought {

	/**
	 * Fewest years before. Guides ask for 20 to 30 at least and would rather have 50
	 * (from memory of WMO-No. 1090).
	 */
	public static final int FEWEST_YEARS = 20;

	/** Rain that ended so many days ago says nothing of today; our choice. */
	public static final int STALE_AFTER = 10;

	private StationDrought() {
	}

	/**
	 * The reading of a day.
	 * @param station the station
	 * @param record its record
	 * @param today only days before it count
	 * @return empty when the rain of late isn't known, or fewer than twenty years are
	 */
	public static Optional<DroughtReading> read(Station station, DailyRecord record, LocalDate today) {
		return lastDay(record, today).flatMap((last) -> {
			RainSums rain = new RainSums(record);
			double sum = rain.upTo(last);
			double[] before = rain.before(last);
			if (Double.isNaN(sum) || before.length < FEWEST_YEARS) {
				return Optional.empty();
			}
			return PrecipitationIndex.of(before).map((index) -> reading(station, last, sum, before, index));
		});
	}

	private static Optional<LocalDate> lastDay(DailyRecord record, LocalDate today) {
		for (LocalDate day = today.minusDays(1); !day.isBefore(today.minusDays(STALE_AFTER)); day = day.minusDays(1)) {
			if (record.value(Element.PRCP, day) != DailyRecord.MISSING) {
				return Optional.of(day);
			}
		}
		return Optional.empty();
	}

	private static DroughtReading reading(Station station, LocalDate last, double sum, double[] before,
			PrecipitationIndex index) {
		double value = index.of(sum);
		Optional<DroughtClass> found = DroughtClass.of(value);
		String words = found.map((one) -> "%s (%s)".formatted(one.words(), one.name())).orElse("no drought");
		return new DroughtReading(last, value, found.map(DroughtClass::ordinal).orElse(null), words, Explanation
			.of("Drought by the station's rain", words)
			.withDetail("The index of this one station, not the weekly drought map, which weighs soil, rivers and "
					+ "reports too.")
			.withSource("Ranges of the index for D0 to D4: U.S. drought classification")
			.withSteps(List.of(
					step("Standardized Precipitation Index", value, "%.1f")
						.withDetail(
								"How many standard deviations from usual. %s of the years had no rain in these days."
									.formatted((index.dry() == 0) ? "None" : "%.0f %%".formatted(index.dry() * 100)))
						.withSource("McKee, Doesken and Kleist 1993; gamma distribution after Thom 1958"),
					step("Rain of %d days".formatted(RainSums.DAYS), sum, "%.0f mm").withDetail("At %s%s, up to %s."
						.formatted(station.name(), station.invented() ? " (invented station)" : "", DayWords.of(last))),
					step("In the middle year", RainSums.median(before), "%.0f mm")
						.withDetail("Of %d years before, over the same days.".formatted(before.length)))));
	}

	private static Explanation step(String label, double value, String format) {
		return Explanation.of(label, String.format(Locale.ROOT, format, value).replace('-', '\u2212'));
	}

}
