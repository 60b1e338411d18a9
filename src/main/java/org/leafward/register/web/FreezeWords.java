package org.leafward.register.web;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.FreezeClimatology;
import org.leafward.climate.FreezeClimatology.Blended;
import org.leafward.climate.FreezeClimatology.Change;
import org.leafward.climate.FreezeClimatology.LeaveOneOut;
import org.leafward.climate.FreezeClimatology.PeriodRow;
import org.leafward.climate.FreezeClimatology.StationUse;
import org.leafward.climate.FreezeClimatology.Years;
import org.leafward.measure.SeasonDay;
import org.leafward.pages.DateLine;
import org.leafward.pages.Formats;
import org.leafward.pages.FreezeCurve;

/** The freezes of a place in words and rows. */
final class FreezeWords {

	/** Any year without 29 February; the dates hold for every year. */
	private static final int PLAIN_YEAR = 2001;

	private static final DateTimeFormatter LONG = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

	private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

	private FreezeWords() {
	}

	/** A row of the table of chances. */
	record ChanceRow(int percent, String spring, String fall, String length) {
	}

	/** A row of the table of stations. */
	record StationRow(String id, String name, boolean invented, String weight, String distance, String height,
			String shift, String spring, String fall, String seasons, String springYears, String fallYears) {
	}

	/** A row of the table of periods. */
	record PeriodWords(String code, String name, String seasons, boolean chosen, String spring, String springMedian,
			String fallMedian, String fall, String length) {
	}

	static String lead(FreezeClimatology freezes) {
		Double spring = freezes.spring().at(10);
		Double fall = freezes.fall().at(10);
		String threshold = freezes.threshold().words();
		if (spring == null && fall == null) {
			return "No dates can be given for " + threshold + ": " + freezes.spring().undefined() + ".";
		}
		return "%s; %s.".formatted(
				(spring != null)
						? "On or after %s, %s comes in one spring in ten".formatted(date(spring, LONG), threshold)
						: "In spring %s is too rare for a date".formatted(threshold),
				(fall != null) ? "by %s it has come in one fall in ten".formatted(date(fall, LONG))
						: "in fall it is too rare for a date");
	}

	static FreezeCurve curve(FreezeClimatology freezes) {
		List<DateLine> lines = new ArrayList<>();
		Double spring = freezes.spring().at(10);
		Double fall = freezes.fall().at(10);
		if (spring != null) {
			lines.add(new DateLine("safe here from", SeasonDay.toDate(spring, PLAIN_YEAR)));
		}
		if (fall != null) {
			lines.add(new DateLine("be ready here by", SeasonDay.toDate(fall, PLAIN_YEAR)));
		}
		return new FreezeCurve("freeze-here", freezes.threshold().words(), chances(freezes.spring()),
				chances(freezes.fall()), lines);
	}

	private static List<FreezeCurve.Chance> chances(Blended curve) {
		return curve.points()
			.stream()
			.map((point) -> new FreezeCurve.Chance(point.probability(), SeasonDay.toDate(point.value(), PLAIN_YEAR)))
			.toList();
	}

	static List<ChanceRow> chanceRows(FreezeClimatology freezes) {
		return IntStream.rangeClosed(1, 9)
			.mapToObj((tenth) -> new ChanceRow(tenth * 10, date(freezes.spring().at(tenth * 10), SHORT),
					date(freezes.fall().at(tenth * 10), SHORT), days(freezes.length().at(tenth * 10))))
			.toList();
	}

	static List<StationRow> stationRows(FreezeClimatology freezes) {
		return freezes.stations().stream().map(FreezeWords::row).toList();
	}

	private static StationRow row(StationUse use) {
		return new StationRow(use.station().id().value(), use.station().name(), use.station().invented(),
				number(use.weight() * 100, 0) + " %", number(use.distanceKilometres(), 1) + " km",
				number(Math.abs(use.higherByMetres()), 0) + ((use.higherByMetres() > 0) ? " m lower" : " m higher"),
				number(Math.abs(use.colderByCelsius()), 1)
						+ ((use.colderByCelsius() >= 0) ? " °C colder" : " °C warmer"),
				median(use.spring()), median(use.fall()), "%d to %d".formatted(use.from(), use.to()),
				years(use.spring()), years(use.fall()));
	}

	private static String median(Years years) {
		return (years.median() != null) ? date(years.median(), SHORT) : "none: " + years.undefined();
	}

	private static String years(Years years) {
		return "%d used, %d without,\n%d left out".formatted(years.used(), years.without(), years.leftOut());
	}

	static String spread(FreezeClimatology freezes) {
		Double spring = freezes.spread().spring();
		Double fall = freezes.spread().fall();
		if (spring == null && fall == null) {
			return "Fewer than two stations have a date, so they can’t be compared.";
		}
		return "Carried to this place, the stations’ middle dates lie %s apart in spring and %s in fall."
			.formatted(apart(spring), apart(fall));
	}

	private static String apart(@Nullable Double days) {
		return (days != null) ? number(days, 0) + " days" : "an unknown time";
	}

	static String check(LeaveOneOut check) {
		if (check.springError() == null && check.fallError() == null) {
			return "There are too few stations around to foretell one from the others, so the error is not known.";
		}
		return "Each station around was foretold from the others, as if it were not there. The middle date came out wrong by %s."
			.formatted(errors(check));
	}

	private static String errors(LeaveOneOut check) {
		List<String> parts = new ArrayList<>();
		if (check.springError() != null) {
			parts.add("%s days in spring (mean of %d stations)".formatted(number(check.springError(), 1),
					check.springCount()));
		}
		if (check.fallError() != null) {
			parts.add("%s days in fall (mean of %d)".formatted(number(check.fallError(), 1), check.fallCount()));
		}
		return String.join(" and ", parts);
	}

	static List<PeriodWords> periodRows(FreezeClimatology freezes) {
		return freezes.periods().stream().map((row) -> row(row, freezes)).toList();
	}

	private static PeriodWords row(PeriodRow row, FreezeClimatology freezes) {
		String seasons = (row.from() == null) ? "no station" : "%d to %d, %s".formatted(row.from(), row.to(),
				(row.stations() == 1) ? "1 station" : row.stations() + " stations");
		return new PeriodWords(row.period().code(), row.period().words(), seasons, row.period() == freezes.period(),
				change(row.spring(), true), change(row.springMedian(), true), change(row.fallMedian(), true),
				change(row.fall(), true), change(row.length(), false));
	}

	/**
	 * For example "21 Apr, 3 days later" on two lines; a difference of none isn't told.
	 */
	private static String change(Change change, boolean date) {
		String value = date ? date(change.value(), SHORT) : days(change.value());
		long later = (change.later() != null) ? Math.round(change.later()) : 0;
		if (later == 0) {
			return value;
		}
		String word = date ? ((later > 0) ? "later" : "earlier") : ((later > 0) ? "more" : "fewer");
		return "%s,\n%d %s %s".formatted(value, Math.abs(later), (Math.abs(later) == 1) ? "day" : "days", word);
	}

	private static String date(@Nullable Double day, DateTimeFormatter format) {
		return (day != null) ? format.format(toDate(day)) : "not known";
	}

	private static LocalDate toDate(double day) {
		return SeasonDay.toDate(day, PLAIN_YEAR);
	}

	private static String number(double value, int decimals) {
		return new Formats(PLAIN_YEAR).number(value, decimals);
	}

	private static String days(@Nullable Double days) {
		return (days != null) ? "%d days".formatted(Math.round(days)) : "not known";
	}

}
