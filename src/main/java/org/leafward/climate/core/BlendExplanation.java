package org.leafward.climate.core;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.Station;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;
import org.leafward.measure.SeasonDay;

/** Opens a blended date down to its stations. */
final class BlendExplanation {

	private BlendExplanation() {
	}

	static Explanation of(MarkerKey key, int season, Blend blend, LocalDate date) {
		List<Explanation> stations = new ArrayList<>();
		blend.parts().forEach((part) -> stations.add(station(key, part, season)));
		blend.silent().forEach((silent) -> stations.add(station(key, silent)));
		Explanation mean = new Explanation(
				(blend.parts().size() == 1) ? "Taken from one station" : "Weighted mean of the stations' dates",
				DayWords.of(date),
				"The nearer a station in distance and height, the more it counts: one over the square of the distance, "
						+ "where 100 m of height count like 10 km and anything nearer than 1 km like 1 km.",
				"Inverse-distance weighting; the value of height is our choice.", stations);
		Explanation spread = new Explanation("Early and late seasons",
				day(blend.earliest(), season) + " to " + day(blend.latest(), season),
				"One season in ten comes before the first of these days, one in ten after the second.", null,
				List.of());
		Explanation method = new Explanation("How a share of the seasons becomes a date", "by rank",
				"The dates of the seasons are put in order; the date for a share p of n seasons is number "
						+ "1 + (n \u2212 1) p, between two dates in proportion, half days to the later day.",
				"Hyndman and Fan 1996, type 7", List.of());
		return new Explanation(MarkerWords.dated(key), DayWords.of(date),
				"From the daily records of %s. %s %s".formatted(stationsOf(blend), MarkerWords.probability(key),
						MarkerWords.whatItIs(key.kind())),
				MarkerWords.source(key.kind()), List.of(mean, spread, method));
	}

	private static String stationsOf(Blend blend) {
		List<String> names = blend.parts()
			.stream()
			.map((part) -> part.neighbour().climate().station().name() + " (" + where(part.neighbour())
					+ (part.neighbour().climate().station().invented() ? ", invented station)" : ")"))
			.toList();
		int last = names.size() - 1;
		return (last <= 0) ? String.join("", names)
				: String.join(", ", names.subList(0, last)) + " and " + names.get(last);
	}

	/** Distance, and how the station lies in height against the site. */
	private static String where(Neighbour neighbour) {
		long metres = Math.round(Math.abs(neighbour.higherBy()));
		String height = (metres == 0) ? "at the same height"
				: "%d m %s".formatted(metres, (neighbour.higherBy() > 0) ? "lower" : "higher");
		return number(neighbour.distance()) + " km away, " + height;
	}

	private static String day(double day, int season) {
		return DayWords.of(SeasonDay.toDate(day, season));
	}

	private static Explanation station(MarkerKey key, Blend.Part part, int season) {
		return new Explanation(name(part.neighbour()), day(part.day(), season), record(part.neighbour()), null,
				List.of(Explanation.of("Its share in the mean", number(part.weight() * 100) + " %"),
						CarriedExplanation.of(key.kind(), part.neighbour()), seasons(part.neighbour(), part.sample())));
	}

	private static Explanation station(MarkerKey key, Blend.Silent silent) {
		return new Explanation(name(silent.neighbour()), "no date: " + silent.reason(), record(silent.neighbour()),
				null, List.of(CarriedExplanation.of(key.kind(), silent.neighbour()),
						seasons(silent.neighbour(), silent.sample())));
	}

	static String name(Neighbour neighbour) {
		return neighbour.climate().station().name() + ", " + where(neighbour);
	}

	private static String record(Neighbour neighbour) {
		Station station = neighbour.climate().station();
		return (station.invented() ? "Invented station %s: its daily record was made up for a demonstration."
				: "Measured daily record of station %s.")
			.formatted(station.id().value());
	}

	private static Explanation seasons(Neighbour neighbour, Sample sample) {
		return new Explanation("Seasons used",
				"%d, from %d to %d".formatted(sample.used(), neighbour.period().from(), neighbour.period().to()),
				"Of %s, those that the record covers.%s%s".formatted(neighbour.normals().words(),
						(sample.without() > 0) ? " In %d more it did not come.".formatted(sample.without()) : "",
						(sample.leftOut() > 0)
								? " Left out: %d, for more than 10 missing days before it came."
									.formatted(sample.leftOut())
								: " None had to be left out for missing days (more than 10 before it came)."),
				"Missing days after the Utah Climate Center's 10-day rule (at second hand)", List.of());
	}

	private static String number(double value) {
		return String.format(Locale.ROOT, "%.1f", value);
	}

}
