package org.leafward.climate.core.water;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.leafward.climate.Station;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;
import org.leafward.measure.NumberWords;

/** Counts what a series was made from, and says it. */
final class WeatherTally {

	private final int[] temperatures;

	private final int[] rain;

	private final int[] methods = new int[ReferenceEt.Method.values().length];

	private final int[] substitutes = new int[Substitute.values().length];

	WeatherTally(int stations) {
		this.temperatures = new int[stations];
		this.rain = new int[stations];
	}

	void temperatures(int station, ReferenceEt amount) {
		this.temperatures[station]++;
		this.methods[amount.method().ordinal()]++;
		amount.substitutes().forEach((substitute) -> this.substitutes[substitute.ordinal()]++);
	}

	void rain(int station) {
		this.rain[station]++;
	}

	Explanation explanation(List<NearStation> stations, LocalDate from, LocalDate to) {
		List<Explanation> steps = new ArrayList<>();
		for (int at = 0; at < stations.size(); at++) {
			steps.add(station(stations.get(at), at));
		}
		for (ReferenceEt.Method method : ReferenceEt.Method.values()) {
			if (this.methods[method.ordinal()] > 0) {
				steps.add(new Explanation("Evapotranspiration by " + method.words(),
						days(this.methods[method.ordinal()]), null, method.source(), List.of()));
			}
		}
		for (Substitute substitute : Substitute.values()) {
			if (this.substitutes[substitute.ordinal()] > 0) {
				steps.add(Explanation.of(substitute.words(), days(this.substitutes[substitute.ordinal()])));
			}
		}
		long all = ChronoUnit.DAYS.between(from, to) + 1;
		return new Explanation("Weather of " + DayWords.of(new DayWindow(from, to)),
				IntStream.of(this.temperatures).sum() + " of " + all + " days with temperatures, "
						+ IntStream.of(this.rain).sum() + " with rain",
				"Each day from the nearest station that has it, where 100 m of height count like 10 km; rain as it fell there.",
				null, steps);
	}

	private Explanation station(NearStation near, int at) {
		Station station = near.climate().station();
		return new Explanation(
				station.name() + " (" + station.id().value() + (station.invented() ? ", invented station)" : ")"),
				"temperatures of " + days(this.temperatures[at]) + ", rain of " + days(this.rain[at]),
				NumberWords.fixed(near.distance(), 1) + " km away; the place is taken as "
						+ NumberWords.fixed(Math.abs(near.colderBy()), 2)
						+ ((near.colderBy() >= 0) ? " °C colder" : " °C warmer") + ", 6.5 °C per km of height.",
				"Lapse rate of the ICAO Standard Atmosphere (Doc 7488)", List.of());
	}

	private static String days(int days) {
		return (days == 1) ? "1 day" : days + " days";
	}

}
