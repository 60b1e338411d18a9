package org.leafward.climate.source.forecast;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.leafward.climate.ForecastDay;
import org.leafward.climate.source.forecast.GridDays.Layers;
import org.leafward.climate.source.forecast.GridLayer.Span;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** Days out of spans; every expected figure is worked out by hand in the test. */
class GridDaysTests {

	private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

	private static final GridLayer NONE = new GridLayer(List.of());

	/** Local midnight is 06:00 UTC in November. */
	private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

	@Test
	void aNightBelongsToTheDayItEndsOn() {
		// 19:00 to 08:00 and 07:00 to 20:00 local time
		GridLayer nights = layer(span("2026-11-25T01:00:00Z", 13, -3.35), span("2026-11-26T01:00:00Z", 13, 1));
		GridLayer days = layer(span("2026-11-25T13:00:00Z", 13, 8));
		List<ForecastDay> built = build(new Layers(nights, days, NONE, NONE, NONE, NONE));
		assertThat(built).containsExactly(new ForecastDay(DAY, -33, 80, null, null, null, null),
				new ForecastDay(DAY.plusDays(1), 10, null, null, null, null, null));
	}

	@Test
	void daysThatAreOverAreLeftOutAndTheRestIsBounded() {
		List<Span> nights = new ArrayList<>();
		for (int day = -3; day < 30; day++) {
			nights.add(new Span(at(day, 2), at(day, 12), day));
		}
		List<ForecastDay> built = build(new Layers(new GridLayer(nights), NONE, NONE, NONE, NONE, NONE));
		assertThat(built).hasSize(15).first().extracting(ForecastDay::day).isEqualTo(DAY);
	}

	@Test
	void anEqualValueForTwoNightsCountsForBoth() {
		GridLayer nights = layer(span("2026-11-25T01:00:00Z", 37, 2));
		assertThat(build(new Layers(nights, NONE, NONE, NONE, NONE, NONE))).extracting(ForecastDay::day)
			.containsExactly(DAY, DAY.plusDays(1));
	}

	@Test
	void rainOverMidnightIsSharedOutByHours() {
		// 6 h, of which 2 lie on the first day: 9 mm give 3 and 6.
		GridLayer rain = layer(span("2026-11-25T06:00:00Z", 22, 0), span("2026-11-26T04:00:00Z", 6, 9),
				span("2026-11-26T10:00:00Z", 20, 1));
		List<ForecastDay> built = build(new Layers(twoNights(), NONE, rain, rain, NONE, NONE));
		assertThat(built.get(0).precipitation()).isEqualTo(30);
		assertThat(built.get(0).snowfall()).isEqualTo(3);
		assertThat(built.get(1).precipitation()).isEqualTo(70);
	}

	@Test
	void aDayThatIsOnlyHalfToldHasNoRain() {
		GridLayer untilNoon = layer(span("2026-11-25T06:00:00Z", 24, 2), span("2026-11-26T06:00:00Z", 12, 5));
		GridLayer withGap = layer(span("2026-11-25T06:00:00Z", 6, 1), span("2026-11-25T18:00:00Z", 12, 1));
		assertThat(build(new Layers(twoNights(), NONE, untilNoon, NONE, NONE, NONE)))
			.extracting(ForecastDay::precipitation)
			.containsExactly(20, null);
		assertThat(build(new Layers(twoNights(), NONE, withGap, NONE, NONE, NONE)))
			.extracting(ForecastDay::precipitation)
			.containsExactly(null, null);
	}

	@Test
	void ofTheDayOfIssueTheRestIsTold() {
		GridLayer fromNoon = layer(span("2026-11-25T18:00:00Z", 12, 4));
		assertThat(build(new Layers(twoNights(), NONE, fromNoon, NONE, NONE, NONE)))
			.extracting(ForecastDay::precipitation)
			.containsExactly(40, null);
	}

	@Test
	void windIsTheMeanByHoursAndHumidityTheLowest() {
		// (6 h x 2 + 18 h x 6) / 24 h = 5 m/s
		GridLayer wind = layer(span("2026-11-25T06:00:00Z", 6, 2), span("2026-11-25T12:00:00Z", 18, 6));
		GridLayer humidity = layer(span("2026-11-25T06:00:00Z", 12, 80), span("2026-11-25T18:00:00Z", 5, 41.4),
				span("2026-11-25T23:00:00Z", 20, 70));
		ForecastDay day = build(new Layers(twoNights(), NONE, NONE, NONE, wind, humidity)).get(0);
		assertThat(day.wind()).isEqualTo(50);
		assertThat(day.lowestHumidity()).isEqualTo(41);
	}

	/** 1 November 2026 has 25 hours in Chicago (IANA time zone database). */
	@Test
	void theDayOfTheChangeOfClocksHas25Hours() {
		LocalDate change = LocalDate.of(2026, 11, 1);
		GridLayer night = layer(span("2026-11-01T01:00:00Z", 13, 4));
		GridLayer rain = layer(span("2026-11-01T05:00:00Z", 25, 25), span("2026-11-02T06:00:00Z", 24, 24));
		ForecastDay day = new GridDays(CHICAGO).build(new Layers(night, NONE, rain, NONE, NONE, NONE), change, 15)
			.get(0);
		assertThat(day.precipitation()).isEqualTo(250);
	}

	@Test
	void farEastOfGreenwichTheDayIsThePlacesOwn() {
		ZoneId guam = ZoneId.of("Pacific/Guam");
		GridLayer days = layer(span("2026-11-24T21:00:00Z", 13, 30));
		assertThat(new GridDays(guam).build(new Layers(NONE, days, NONE, NONE, NONE, NONE), DAY, 15))
			.extracting(ForecastDay::day)
			.containsExactly(DAY);
	}

	@Test
	void amountsAreNeitherLostNorMade() {
		List<Span> spans = new ArrayList<>();
		double all = 0;
		for (int part = 0; part < 20; part++) {
			Instant from = at(0, 6).plus(Duration.ofHours(6L * part));
			double amount = (part * 37 % 11) / 2.0;
			spans.add(new Span(from, from.plus(Duration.ofHours(6)), amount));
			all += amount;
		}
		List<Span> nights = new ArrayList<>();
		for (int day = 0; day < 5; day++) {
			nights.add(new Span(at(day, 2), at(day, 12), 0));
		}
		int tenths = build(new Layers(new GridLayer(nights), NONE, new GridLayer(spans), NONE, NONE, NONE)).stream()
			.mapToInt(ForecastDay::precipitation)
			.sum();
		assertThat(tenths / 10.0).isCloseTo(all, within(0.3));
	}

	private static List<ForecastDay> build(Layers layers) {
		return new GridDays(CHICAGO).build(layers, DAY, 15);
	}

	private static GridLayer twoNights() {
		return layer(span("2026-11-25T01:00:00Z", 13, 0), span("2026-11-26T01:00:00Z", 13, 0));
	}

	private static Instant at(int day, int hour) {
		return DAY.plusDays(day).atTime(hour, 0).atZone(ZoneOffset.UTC).toInstant();
	}

	private static Span span(String from, int hours, double value) {
		Instant begin = Instant.parse(from);
		return new Span(begin, begin.plus(Duration.ofHours(hours)), value);
	}

	private static GridLayer layer(Span... spans) {
		return new GridLayer(List.of(spans));
	}

}
