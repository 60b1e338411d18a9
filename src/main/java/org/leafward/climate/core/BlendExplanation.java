package org.leafward.climate.core;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.Station;
import org.leafward.measure.Explanation;
import org.leafward.measure.SeasonDay;

/** Opens a blended date down to its stations. */
final class BlendExplanation {

	private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

	private BlendExplanation() {
	}

	static Explanation of(MarkerKey key, int season, Blend blend, LocalDate date) {
		List<Explanation> stations = new ArrayList<>();
		blend.parts().forEach((part) -> stations.add(station(part, season)));
		blend.silent().forEach((silent) -> stations.add(station(silent)));
		Explanation mean = new Explanation(
				(blend.parts().size() == 1) ? "Taken from one station" : "Weighted mean of the stations' dates",
				date.format(DATE),
				"Weight: one over the square of the distance, where 100 m of height count like "
						+ "10 km and anything nearer than 1 km like 1 km.",
				"Inverse-distance weighting; the value of height is our choice.", stations);
		Explanation spread = new Explanation("One season in ten is earlier, one in ten later than",
				SeasonDay.toDate(blend.earliest(), season).format(DATE) + " and "
						+ SeasonDay.toDate(blend.latest(), season).format(DATE),
				null, null, List.of());
		Explanation method = new Explanation("Dates at a probability", "empirical quantile",
				"Rank 1 + (n - 1) p among " + "the dated seasons, linear in between, half days to the later day.",
				"Hyndman and Fan 1996, type 7", List.of());
		return new Explanation(MarkerWords.title(key), date.format(DATE),
				MarkerWords.probability(key) + " " + MarkerWords.whatItIs(key.kind()), MarkerWords.source(key.kind()),
				List.of(mean, spread, method));
	}

	private static Explanation station(Blend.Part part, int season) {
		List<Explanation> steps = new ArrayList<>();
		steps.add(Explanation.of("Weight", "%s %%".formatted(number(part.weight() * 100))));
		steps.addAll(place(part.neighbour()));
		steps.add(seasons(part.neighbour(), part.sample()));
		return new Explanation(name(part.neighbour()), SeasonDay.toDate(part.day(), season).format(DATE),
				invented(part.neighbour()), null, steps);
	}

	private static Explanation station(Blend.Silent silent) {
		List<Explanation> steps = new ArrayList<>(place(silent.neighbour()));
		steps.add(seasons(silent.neighbour(), silent.sample()));
		return new Explanation(name(silent.neighbour()), "no date: " + silent.reason(), invented(silent.neighbour()),
				null, steps);
	}

	static String name(Neighbour neighbour) {
		Station station = neighbour.climate().station();
		return "%s (%s%s)".formatted(station.name(), station.id().value(),
				station.invented() ? ", invented station" : "");
	}

	private static String invented(Neighbour neighbour) {
		return neighbour.climate().station().invented()
				? "Invented station: its record was made up for a demonstration." : "Measured daily record.";
	}

	private static List<Explanation> place(Neighbour neighbour) {
		double higher = neighbour.higherBy();
		double colder = neighbour.colderBy();
		return List.of(Explanation.of("Distance", number(neighbour.distance()) + " km"),
				Explanation.of("Height",
						"the site lies %.0f m %s".formatted(Math.abs(higher), (higher >= 0) ? "higher" : "lower")),
				new Explanation("Temperature at the site",
						String.format(Locale.ROOT, "taken as %.2f °C %s", Math.abs(colder),
								(colder >= 0) ? "colder" : "warmer"),
						"6.5 °C per km of height. A hollow can be colder on clear nights; that is not in it.",
						"Lapse rate of the ICAO Standard Atmosphere (Doc 7488)", List.of()));
	}

	private static Explanation seasons(Neighbour neighbour, Sample sample) {
		return new Explanation("Seasons %d to %d".formatted(neighbour.period().from(), neighbour.period().to()),
				"%d with a date, %d without the event, %d left out".formatted(sample.used(), sample.without(),
						sample.leftOut()),
				"The latest seasons that the record covers, at most 30. A season is left out when more than 10 days "
						+ "are missing before the event is met.",
				"Missing days after the Utah Climate Center's 10-day rule (at second hand)", List.of());
	}

	private static String number(double value) {
		return String.format(Locale.ROOT, "%.1f", value);
	}

}
