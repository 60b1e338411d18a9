package org.leafward.care.web;

import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.review.AmountWords;
import org.leafward.care.core.review.Outcome;
import org.leafward.care.core.review.Tally;
import org.leafward.care.core.review.YearReview;
import org.leafward.climate.Station;
import org.leafward.climate.WeatherYear;
import org.leafward.measure.DayWords;
import org.leafward.pages.Formats;

/** The year of a site in sentences. */
final class ReviewWords {

	private static final int MOST_ROWS = 200;

	private static final int MOST_MISSED = 60;

	private static final int MOST_IN_MONTH = 60;

	private final Formats formats;

	private final LocalDate today;

	private ReviewWords(Formats formats, LocalDate today) {
		this.formats = formats;
		this.today = today;
	}

	/**
	 * Words the review of a year.
	 * @param review what was asked for and done
	 * @param weather what the weather did; null when nobody can tell
	 * @param today the day at the site
	 * @return the words
	 */
	static ReviewView of(YearReview review, @Nullable WeatherYear weather, LocalDate today) {
		return new ReviewWords(new Formats(review.year()), today).view(review, weather);
	}

	private ReviewView view(YearReview review, @Nullable WeatherYear weather) {
		List<YearReview.Done> bad = review.atBadTimes();
		return new ReviewView(review.year(), lead(review), review.empty(), review.year() == this.today.getYear(),
				counts(review.total()), counts(review.works()), counts(cut(review.plantings(), MOST_ROWS)),
				more(review.plantings(), MOST_ROWS),
				cut(review.missed(), MOST_MISSED).stream().map(this::missed).toList(),
				more(review.missed(), MOST_MISSED),
				cut(review.leftOut(), MOST_MISSED).stream().map(this::leftOut).toList(),
				more(review.leftOut(), MOST_MISSED), review.months().stream().map(this::month).toList(),
				cut(review.watered(), MOST_ROWS).stream().map(this::water).toList(), more(review.watered(), MOST_ROWS),
				cut(bad, MOST_MISSED).stream().map(this::done).toList(), more(bad, MOST_MISSED),
				(weather != null) ? weather(weather) : List.of(), (weather != null) ? notes(weather) : List.of(),
				(weather != null) ? null : noWeather(review.year()));
	}

	private static <T> List<T> cut(List<T> all, int most) {
		return all.subList(0, Math.min(most, all.size()));
	}

	private static int more(List<?> all, int most) {
		return Math.max(0, all.size() - most);
	}

	private String lead(YearReview review) {
		int year = review.year();
		Tally total = review.total();
		if (year > this.today.getYear()) {
			return "%d has not begun, so there is nothing to look back on yet.".formatted(year)
					+ ((total.open() > 0) ? " Planned so far: %s.".formatted(tasks(total.open())) : "");
		}
		if (review.empty()) {
			return "Nothing is kept of %d here: no task had its days in it, and nothing was logged.".formatted(year);
		}
		String when = review.over() ? "In %d".formatted(year) : "In %d so far".formatted(year);
		if (total.asked() == 0) {
			return "%s no task asked for anything; what was done all the same stands below.".formatted(when);
		}
		return "%s: %d of %s done, %d of them late; %d missed.".formatted(when, total.done(), tasks(total.asked()),
				total.late(), total.missed());
	}

	private String tasks(int count) {
		return this.formats.count(count, "task", "tasks");
	}

	private List<Fact> counts(Tally total) {
		List<Fact> counts = new ArrayList<>();
		count(Outcome.ON_TIME, total.onTime(), counts);
		count(Outcome.LATE, total.late(), counts);
		count(Outcome.LEFT_OUT, total.leftOut(), counts);
		count(Outcome.MISSED, total.missed(), counts);
		count(Outcome.NOT_NEEDED, total.notNeeded(), counts);
		if (total.open() > 0) {
			count(Outcome.OPEN, total.open(), counts);
		}
		return counts;
	}

	private void count(Outcome outcome, int count, List<Fact> counts) {
		counts.add(new Fact(first(outcome.words()), this.formats.number(count, 0)));
	}

	private static List<ReviewView.CountRow> counts(List<YearReview.Row> rows) {
		return rows.stream()
			.map((row) -> new ReviewView.CountRow(row.own() ? row.name() : first(row.name()), row.own(), row.tally()))
			.toList();
	}

	private static String first(String words) {
		return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
	}

	private ReviewView.MissedRow missed(YearReview.Missed one) {
		String often = (one.times() == 1) ? "" : "Missed %d times, the last time then.".formatted(one.times());
		LocalDate next = one.next();
		String then = (next == null) ? "Its next days are not planned yet."
				: next.isAfter(this.today) ? "Next time: it begins on %s.".formatted(DayWords.of(next))
						: "It is due again now, since %s.".formatted(DayWords.of(next));
		return new ReviewView.MissedRow(one.title(), "/tasks/" + one.task(), one.plant(), one.own(),
				this.formats.window(one.window()), often, one.otherwise(), one.why(), then);
	}

	private ReviewView.LeftOutRow leftOut(YearReview.LeftOut one) {
		return new ReviewView.LeftOutRow(one.title(), "/tasks/" + one.task(), one.plant(), one.own(),
				this.formats.window(one.window()), one.reason());
	}

	private ReviewView.MonthRow month(YearReview.MonthDone month) {
		List<String> sums = month.sums()
			.stream()
			.map((one) -> "%s %s".formatted(one.work().words(), (one.times() == 1) ? "once" : one.times() + " times"))
			.toList();
		return new ReviewView.MonthRow(name(month.month()), first(String.join(", ", sums)) + ".",
				cut(month.done(), MOST_IN_MONTH).stream().map(this::done).toList(), more(month.done(), MOST_IN_MONTH));
	}

	private static String name(Month month) {
		return month.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
	}

	private ReviewView.DoneRow done(YearReview.Done one) {
		String amount = (one.amount() != null && one.unit() != null) ? ", " + AmountWords.of(one.amount(), one.unit())
				: "";
		return new ReviewView.DoneRow(first(one.work().words()) + amount, this.formats.day(one.day()), one.where(),
				one.own(), one.note(), one.holdOff(),
				(one.holdOffTask() != null) ? "/tasks/" + one.holdOffTask() : null,
				(one.task() != null) ? "/tasks/" + one.task() : null);
	}

	private ReviewView.WaterRow water(YearReview.Watered one) {
		return new ReviewView.WaterRow(one.own() ? one.where() : first(one.where()), one.own(), "%s in %s"
			.formatted(AmountWords.depth(one.millimetres()), this.formats.count(one.times(), "watering", "waterings")));
	}

	private String noWeather(int year) {
		return (year > this.today.getYear() || this.today.equals(LocalDate.of(year, 1, 1)))
				? "No day of %d is over yet, so the weather has nothing to tell.".formatted(year)
				: "No weather station within 150 km that has ten seasons on record observed a day of %d, so what the weather did can’t be told."
					.formatted(year);
	}

	private List<Fact> weather(WeatherYear weather) {
		List<Fact> facts = new ArrayList<>();
		facts.add(new Fact("Last freeze of spring", spring(weather.spring(), weather)));
		facts.add(new Fact("First freeze of fall", fall(weather.fall(), weather)));
		WeatherYear.Rain rain = weather.rain();
		facts.add(new Fact("Rain and melted snow",
				(rain != null) ? rain(rain, weather.over()) : "No station within 150 km measured it."));
		if (rain != null) {
			facts.add(new Fact("Longest dry spell", dry(rain)));
		}
		facts.add(new Fact("Hottest day", extreme(weather.hottest())));
		facts.add(new Fact("Coldest night", extreme(weather.coldest())));
		WeatherYear.Heat heat = weather.heat();
		facts.add(new Fact("Degree-days above 50 °F (10 °C)",
				((heat != null) ? heat(heat) : "Not known.") + sentence(weather.whyNoHeat())));
		return facts;
	}

	private String spring(WeatherYear.Freeze freeze, WeatherYear weather) {
		LocalDate date = freeze.date();
		String came = switch (freeze.seen()) {
			case OBSERVED -> (date == null) ? "" : freeze.settled() ? came(date, freeze.median())
					: "The latest so far came on %s.".formatted(this.formats.day(date));
			case NONE -> "None came.";
			case NOT_YET -> "None came up to %s.".formatted(this.formats.day(weather.to()));
			case UNKNOWN -> "Too many days of the record are missing to tell.";
		};
		return came + usual(freeze);
	}

	private String fall(WeatherYear.Freeze freeze, WeatherYear weather) {
		LocalDate date = freeze.date();
		String came = switch (freeze.seen()) {
			case OBSERVED -> (date != null) ? came(date, freeze.median()) : "";
			case NONE -> "None came.";
			case NOT_YET -> "None came up to %s.".formatted(this.formats.day(weather.to()));
			case UNKNOWN -> "Too many days of the record are missing to tell.";
		};
		return came + usual(freeze);
	}

	private String came(LocalDate date, @Nullable LocalDate median) {
		String day = this.formats.day(date);
		if (median == null) {
			return "It came on %s.".formatted(day);
		}
		long later = ChronoUnit.DAYS.between(median, date);
		if (later == 0) {
			return "It came on %s, just as usual.".formatted(day);
		}
		return "It came on %s, %s %s than usual.".formatted(day, this.formats.count(Math.abs(later), "day", "days"),
				(later > 0) ? "later" : "earlier");
	}

	private String usual(WeatherYear.Freeze freeze) {
		LocalDate median = freeze.median();
		LocalDate early = freeze.early();
		LocalDate late = freeze.late();
		if (median == null || early == null || late == null) {
			return " What is usual isn’t known: %s.".formatted(freeze.whyNoNormal());
		}
		return " Usual is %s; in eight years of ten it comes between %s and %s."
			.formatted(this.formats.dayOfYear(median), this.formats.dayOfYear(early), this.formats.dayOfYear(late));
	}

	private String rain(WeatherYear.Rain rain, boolean over) {
		boolean whole = over && rain.to().getDayOfYear() == rain.to().lengthOfYear();
		StringBuilder words = new StringBuilder();
		words.append(whole ? "%s in the year.".formatted(AmountWords.depth(rain.millimetres()))
				: "%s up to %s.".formatted(AmountWords.depth(rain.millimetres()), this.formats.dayOfYear(rain.to())));
		Double normal = rain.normal();
		Double low = rain.low();
		Double high = rain.high();
		if (normal != null && low != null && high != null) {
			double more = rain.millimetres() - normal;
			words
				.append(" That is %s %s than usual.".formatted(AmountWords.depth(Math.abs(more)),
						(more >= 0) ? "more" : "less"))
				.append(" Usual is %s, in eight years of ten between %s and %s.".formatted(AmountWords.depth(normal),
						AmountWords.depth(low), AmountWords.depth(high)));
		}
		words.append(sentence(rain.whyNoNormal()));
		if (rain.missing() > 0) {
			words.append(" %s without a measurement, which the sum leaves out."
				.formatted(this.formats.count(rain.missing(), "day is", "days are")));
		}
		return words.toString();
	}

	private String dry(WeatherYear.Rain rain) {
		WeatherYear.Spell driest = rain.driest();
		String rule = " A dry spell has less than 6 mm (0.25 in) on each day and less than 13 mm (0.5 in) in all.";
		return ((driest == null) ? "There was none." : "%s, %s.".formatted(
				this.formats.count(driest.days(), "day", "days"), this.formats.window(driest.from(), driest.to())))
				+ rule;
	}

	private String extreme(WeatherYear.@Nullable Extreme extreme) {
		return (extreme == null) ? "Not known." : "%s on %s."
			.formatted(this.formats.wholeTemperature(extreme.celsius()), this.formats.day(extreme.day()));
	}

	private String heat(WeatherYear.Heat heat) {
		String sum = "%s by %s, counted from %s.".formatted(this.formats.number(heat.sum(), 0),
				this.formats.day(heat.to()), this.formats.dayOfYear(heat.from()));
		Double normal = heat.normal();
		Double low = heat.low();
		Double high = heat.high();
		return (normal == null || low == null || high == null) ? sum
				: sum + " Usual by then is %s, in eight years of ten between %s and %s.".formatted(
						this.formats.number(normal, 0), this.formats.number(low, 0), this.formats.number(high, 0));
	}

	private static String sentence(@Nullable String words) {
		return (words != null) ? " " + words : "";
	}

	private List<String> notes(WeatherYear weather) {
		List<String> notes = new ArrayList<>();
		notes.add("The temperatures are those of %s, moved to the height of this place, and minima also to how it lies."
			.formatted(station(weather.station(), weather.distance())));
		String end = weather.over() ? ""
				: " The latest day that counts here is %s.".formatted(this.formats.day(weather.to()));
		notes.add(((weather.missing() == 0) ? "No day of its record is missing."
				: "Its record lacks a minimum or a maximum on %s of %s.".formatted(
						this.formats.count(weather.missing(), "day", "days"), this.formats.number(weather.days(), 0)))
				+ end);
		WeatherYear.Rain rain = weather.rain();
		if (rain != null && !rain.station().equals(weather.station())) {
			notes.add("The rain is that of %s, as the nearer station hardly measured any."
				.formatted(station(rain.station(), rain.distance())));
		}
		notes.add("Usual is the middle of its seasons %d to %d; freezes are those at 32 °F (0 °C)."
			.formatted(weather.normalsFrom(), weather.normalsTo()));
		if (weather.station().invented()) {
			notes.add("The station and its record are invented for a demonstration.");
		}
		return notes;
	}

	private String station(Station station, double distance) {
		return "%s, %s km (%s miles) away".formatted(station.name(), this.formats.number(distance, 0),
				this.formats.number(distance / 1.609344, 0));
	}

}
