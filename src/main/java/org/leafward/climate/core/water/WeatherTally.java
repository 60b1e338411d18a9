package org.leafward.climate.core.water;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.leafward.climate.Station;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;

/** Counts what a series was made from, and says it. */
final class WeatherTally {

	private final int[] temperatures;

	private final int[] rain;

	private final Map<ReferenceEt.Method, Integer> methods = new EnumMap<>(ReferenceEt.Method.class);

	private final Map<Substitute, Integer> substitutes = new EnumMap<>(Substitute.class);

	WeatherTally(int stations) {
		this.temperatures = new int[stations];
		this.rain = new int[stations];
	}

	void temperatures(int station, ReferenceEt amount) {
		this.temperatures[station]++;
		this.methods.merge(amount.method(), 1, Integer::sum);
		amount.substitutes().forEach((substitute) -> this.substitutes.merge(substitute, 1, Integer::sum));
	}

	void rain(int station) {
		this.rain[station]++;
	}

	Explanation explanation(List<NearStation> stations, LocalDate from, LocalDate to) {
		List<Explanation> steps = new ArrayList<>();
		for (int at = 0; at < stations.size(); at++) {
			steps.add(station(stations.get(at), at));
		}
		this.methods.forEach((method, days) -> steps.add(new Explanation("Evapotranspiration by " + method.words(),
				days(days), null, method.source(), List.of())));
		this.substitutes.forEach((substitute, days) -> steps.add(Explanation.of(substitute.words(), days(days))));
		long all = ChronoUnit.DAYS.between(from, to) + 1;
		return new Explanation("Weather of " + DayWords.of(new DayWindow(from, to)),
				"%d of %d days with temperatures, %d with rain".formatted(IntStream.of(this.temperatures).sum(), all,
						IntStream.of(this.rain).sum()),
				"Each day from the nearest station that has it, where 100 m of height count like 10 km; rain as it fell there.",
				null, steps);
	}

	private Explanation station(NearStation near, int at) {
		Station station = near.climate().station();
		return new Explanation(
				"%s (%s%s)".formatted(station.name(), station.id().value(),
						station.invented() ? ", invented station" : ""),
				"temperatures of %s, rain of %s".formatted(days(this.temperatures[at]), days(this.rain[at])),
				String.format(Locale.ROOT, "%.1f km away; the place is taken as %.2f °C %s, 6.5 °C per km of height.",
						near.distance(), Math.abs(near.colderBy()), (near.colderBy() >= 0) ? "colder" : "warmer"),
				"Lapse rate of the ICAO Standard Atmosphere (Doc 7488)", List.of());
	}

	private static String days(int days) {
		return (days == 1) ? "1 day" : days + " days";
	}

}
