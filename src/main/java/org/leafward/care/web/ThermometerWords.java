package org.leafward.care.web;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.care.PlacePreview;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.Microclimate;
import org.leafward.climate.MinimumComparison;
import org.leafward.climate.Station;
import org.leafward.measure.DayWords;
import org.leafward.measure.NumberWords;
import org.leafward.pages.Formats;

/** A thermometer beside the estimate, in words and rows. */
final class ThermometerWords {

	/** A degree Celsius in degrees Fahrenheit, of a difference. */
	private static final double FAHRENHEIT_PER_CELSIUS = 1.8;

	private static final int MEDIAN = 50;

	private ThermometerWords() {
	}

	/**
	 * A row of the table of nights.
	 *
	 * @param day the day
	 * @param own what the thermometer showed
	 * @param estimated the estimate, or that there is none
	 * @param difference thermometer against estimate; empty without one
	 */
	record Row(String day, String own, String estimated, String difference) {
	}

	/**
	 * A season marker before and after.
	 *
	 * @param name which
	 * @param before its date now
	 * @param after its date then
	 * @param moved by how much
	 */
	record MarkerRow(String name, String before, String after, String moved) {
	}

	static List<MarkerRow> markers(PlacePreview preview, Formats formats) {
		return preview.markers()
			.stream()
			.map((one) -> new MarkerRow(name(one.key()), date(one.before(), formats), date(one.after(), formats),
					moved(one.before(), one.after())))
			.toList();
	}

	private static String date(@Nullable LocalDate date, Formats formats) {
		return (date != null) ? formats.day(date) : "no date";
	}

	private static String moved(@Nullable LocalDate before, @Nullable LocalDate after) {
		if (before == null || after == null) {
			return "";
		}
		long days = ChronoUnit.DAYS.between(before, after);
		if (days == 0) {
			return "the same";
		}
		return "%d %s %s".formatted(Math.abs(days), (Math.abs(days) == 1) ? "day" : "days",
				(days > 0) ? "later" : "earlier");
	}

	static List<Row> rows(MinimumComparison compared, Formats formats) {
		return compared.nights()
			.stream()
			.map((night) -> new Row(formats.day(night.day()), formats.temperature(night.own()),
					(night.estimated() != null) ? formats.temperature(night.estimated()) : "no record",
					(night.difference() != null) ? offset(night.difference()) : ""))
			.toList();
	}

	/**
	 * A difference to the estimate.
	 * @param celsius negative when colder
	 * @return for example "1.4 °C (2.5 °F) colder"
	 */
	static String offset(double celsius) {
		double tenths = Math.round(celsius * 10) / 10.0;
		return (tenths == 0) ? "no difference" : degrees(Math.abs(tenths)) + ((tenths < 0) ? " colder" : " warmer");
	}

	private static String degrees(double celsius) {
		return "%s °C (%s °F)".formatted(NumberWords.fixed(celsius, 1),
				NumberWords.fixed(celsius * FAHRENHEIT_PER_CELSIUS, 1));
	}

	static List<String> effects(List<Microclimate.Effect> effects) {
		return effects.stream().map((one) -> "%s: %s.".formatted(one.name(), offset(one.celsius()))).toList();
	}

	/** How far the mean can be leaned on, a sentence each. */
	static List<String> sure(MinimumComparison compared) {
		List<String> sentences = new ArrayList<>();
		sentences.add(counted(compared));
		Double spread = compared.spread();
		Double uncertainty = compared.uncertainty();
		if (spread != null && uncertainty != null) {
			sentences.add("From night to night the difference varies by about %s.".formatted(degrees(spread)));
			sentences.add("The mean is good to %s at best.".formatted(degrees(uncertainty)));
		}
		if (compared.counted() > 0 && compared.few()) {
			sentences.add("Fewer than %d nights are too few to lean on: go on reading it."
				.formatted(MinimumComparison.ENOUGH));
		}
		if (compared.wide()) {
			sentences.add("That is a wide spread: look at where the thermometer hangs and whether each date is that of"
					+ " the morning.");
		}
		if (compared.mean() != null && compared.offset() == null) {
			sentences
				.add("A mean difference of more than 10 °C (18 °F) can’t be used: look at the unit and the dates.");
		}
		return sentences;
	}

	private static String counted(MinimumComparison compared) {
		int all = compared.nights().size();
		if (compared.counted() == 0) {
			return (compared.lastDay() != null)
					? "None of these nights is in the records of the stations around, which go to %s."
						.formatted(DayWords.of(compared.lastDay()))
					: "No weather station near enough covers ten seasons, so there is no estimate to compare with.";
		}
		return "%d of %d nights counted, by the records of %s.".formatted(compared.counted(), all,
				named(compared.stations()));
	}

	private static String named(List<Station> stations) {
		return String.join(", ", stations.stream().map(Station::name).toList());
	}

	/** A marker with its year in so many. */
	private static String name(MarkerKey key) {
		return MarkerNames.full(key)
				+ ((key.probability() == MEDIAN) ? ", middle year" : ", careful date of one year in ten");
	}

}
