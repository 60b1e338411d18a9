package org.leafward.climate.core;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.leafward.climate.MarkerKey;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;
import org.leafward.measure.NumberWords;
import org.leafward.measure.SeasonDay;

/** Opens the blended dates of a site down to its stations. Never changes. */
final class BlendExplanation {

	private static final Explanation METHOD = new Explanation("How a share of the seasons becomes a date", "by rank",
			"The dates of the seasons are put in order; the date for a share p of n seasons is number "
					+ "1 + (n \u2212 1) p, between two dates in proportion, half days to the later day.",
			"Hyndman and Fan 1996, type 7", List.of());

	/** By identity: the neighbours are the site's own. */
	private final Map<Neighbour, NeighbourWords> words = new IdentityHashMap<>();

	BlendExplanation(List<Neighbour> neighbours) {
		neighbours.forEach((neighbour) -> this.words.put(neighbour, new NeighbourWords(neighbour)));
	}

	Explanation of(MarkerKey key, int season, Blend blend, LocalDate date) {
		List<Explanation> stations = new ArrayList<>();
		blend.parts().forEach((part) -> stations.add(station(key, part, season)));
		blend.silent().forEach((silent) -> stations.add(station(key, silent)));
		String day = DayWords.of(date);
		Explanation mean = new Explanation(
				(blend.parts().size() == 1) ? "Taken from one station" : "Weighted mean of the stations' dates", day,
				"The nearer a station in distance and height, the more it counts: one over the square of the distance, "
						+ "where 100 m of height count like 10 km and anything nearer than 1 km like 1 km.",
				"Inverse-distance weighting; the value of height is our choice.", stations);
		Explanation spread = new Explanation("Early and late seasons",
				day(blend.earliest(), season) + " to " + day(blend.latest(), season),
				"One season in ten comes before the first of these days, one in ten after the second.", null,
				List.of());
		return new Explanation(MarkerWords.dated(key), day,
				"From the daily records of " + stationsOf(blend) + ". " + MarkerWords.probability(key) + " "
						+ MarkerWords.whatItIs(key.kind()),
				MarkerWords.source(key.kind()), List.of(mean, spread, METHOD));
	}

	private String stationsOf(Blend blend) {
		List<String> names = blend.parts().stream().map((part) -> of(part.neighbour()).listed()).toList();
		int last = names.size() - 1;
		return (last <= 0) ? String.join("", names)
				: String.join(", ", names.subList(0, last)) + " and " + names.get(last);
	}

	private Explanation station(MarkerKey key, Blend.Part part, int season) {
		NeighbourWords station = of(part.neighbour());
		return new Explanation(station.name(), day(part.day(), season), station.record(), null,
				List.of(Explanation.of("Its share in the mean", NumberWords.fixed(part.weight() * 100, 1) + " %"),
						station.carried(key.kind()), station.seasons(part.sample())));
	}

	private Explanation station(MarkerKey key, Blend.Silent silent) {
		NeighbourWords station = of(silent.neighbour());
		return new Explanation(station.name(), "no date: " + silent.reason(), station.record(), null,
				List.of(station.carried(key.kind()), station.seasons(silent.sample())));
	}

	/** Why a blend has no date, station by station. */
	String silence(Blend blend) {
		List<String> reasons = blend.silent()
			.stream()
			.map((silent) -> of(silent.neighbour()).name() + ": " + silent.reason())
			.toList();
		return String.join("; ", reasons) + ".";
	}

	private NeighbourWords of(Neighbour neighbour) {
		NeighbourWords known = this.words.get(neighbour);
		return (known != null) ? known : new NeighbourWords(neighbour);
	}

	private static String day(double day, int season) {
		return DayWords.of(SeasonDay.toDate(day, season));
	}

}
