package org.leafward.climate.core;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.leafward.climate.DayLength;
import org.leafward.climate.HeatGoal;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.PlaceMarkers;
import org.leafward.climate.SeasonMarker;
import org.leafward.climate.Station;
import org.leafward.climate.core.SeasonOutcome.State;
import org.leafward.climate.core.heat.HeatMeasure;
import org.leafward.climate.core.soil.SoilWave;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;
import org.leafward.measure.SeasonDay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

/** Soil near the surface, the end of de-icing, heat from a start of its own, daylight. */
class UpperSoilAndIceTests {

	private static final Season NORTH = new Season(2021, Hemisphere.NORTH);

	private static final Season SOUTH = new Season(2021, Hemisphere.SOUTH);

	/**
	 * At 4 inches the published rate trails a slow wave by three days. Heat in even soil
	 * does so by 2.6 to 2.9 days with a diffusivity of 0.5 to 0.4e-6 m²/s, as moist loam
	 * has (from memory), and by a quarter of that at one inch.
	 */
	@Test
	void theUpperLayerTrailsTheAirByAQuarterOfTheTime() {
		assertThat(SoilLayer.lag(SoilLayer.FOUR_INCHES.rate(false))).isCloseTo(3, within(1e-9));
		assertThat(SoilLayer.lag(SoilLayer.UPPER.rate(false))).isCloseTo(0.75, within(1e-9));
		assertThat(SoilLayer.lag(SoilLayer.UPPER.rate(true)) - SoilLayer.lag(SoilLayer.UPPER.rate(false))).isCloseTo(6,
				within(1e-9));
		SoilWave wave = new SoilWave(10, 12, SoilWave.YEAR, 0.4e-6);
		assertThat(wave.lagAt(0.1016) / SoilWave.DAY).isCloseTo(3, within(0.1));
		assertThat(wave.lagAt(0.0254) / wave.lagAt(0.1016)).isCloseTo(0.25, within(1e-9));
	}

	/** By hand: of 10 degrees, 10 · (1 - 1/1.75)ⁿ are left after n days. */
	@Test
	void theUpperLayerFollowsFaster() {
		DailyRecord.Builder builder = DailyRecord.builder();
		for (LocalDate day = LocalDate.of(2020, 1, 1); day.getMonthValue() < 3; day = day.plusDays(1)) {
			int air = (day.getMonthValue() == 1) ? 100 : 0;
			builder.set(Element.TMIN, day, air - 50);
			builder.set(Element.TMAX, day, air + 50);
		}
		SoilTemperature soil = SoilTemperature.estimate(builder.build(), SoilLayer.UPPER);
		assertThat(soil.celsius(LocalDate.of(2020, 2, 1).toEpochDay())).isCloseTo(4.2857f, within(1e-3f));
		assertThat(soil.celsius(LocalDate.of(2020, 2, 2).toEpochDay())).isCloseTo(1.8367f, within(1e-3f));
	}

	@ParameterizedTest
	@EnumSource(Hemisphere.class)
	void deIcingEndsWithTheLastWetFrost(Hemisphere hemisphere) {
		boolean north = hemisphere == Hemisphere.NORTH;
		LocalDate wet = north ? LocalDate.of(2021, 3, 20) : LocalDate.of(2021, 9, 20);
		DailyRecord.Builder builder = frosty(wet);
		Season season = north ? NORTH : SOUTH;
		assertThat(IcyDays.lastSpring(builder.build(), season, 0).date()).isEqualTo(wet);
		assertThat(IcyDays.lastSpring(builder.build(), season, -21).date()).as("colder than that it was not")
			.isEqualTo(wet.minusDays(10));
		assertThat(IcyDays.lastSpring(builder.build(), season, -51).state()).isEqualTo(State.WITHOUT);
		for (int back = 0; back < 11; back++) {
			builder = without(builder, wet.plusDays(1 + back));
		}
		assertThat(IcyDays.lastSpring(builder.build(), season, 0).state()).as("eleven days without rain told")
			.isEqualTo(State.LEFT_OUT);
	}

	/** Frost every night; it snows ten days before the day, and sleets on it. */
	private static DailyRecord.Builder frosty(LocalDate wet) {
		DailyRecord.Builder builder = DailyRecord.builder();
		for (LocalDate day = wet.minusMonths(10); day.isBefore(wet.plusMonths(10)); day = day.plusDays(1)) {
			boolean mild = day.isAfter(wet.plusDays(15));
			builder.set(Element.TMIN, day, mild ? 80 : day.equals(wet) ? -20 : -50);
			builder.set(Element.PRCP, day, mild || day.equals(wet) || day.equals(wet.minusDays(10)) ? 1 : 0);
		}
		return builder;
	}

	private static DailyRecord.Builder without(DailyRecord.Builder builder, LocalDate day) {
		builder.set(Element.PRCP, day, 0);
		DailyRecord before = builder.build();
		DailyRecord.Builder after = DailyRecord.builder();
		for (LocalDate one = before.firstDay().orElseThrow(); !one.isAfter(before.lastDay().orElseThrow()); one = one
			.plusDays(1)) {
			for (Element element : Element.values()) {
				if (before.value(element, one) != DailyRecord.MISSING
						&& !(element == Element.PRCP && one.equals(day))) {
					after.set(element, one, before.value(element, one));
				}
			}
		}
		return after;
	}

	/** Counted by the script that the head of heat/central-park-dates.csv tells of. */
	@Test
	void torontoStopsDeIcingInApril() {
		StationClimate climate = new StationClimate(
				new Station(RecordFixture.TORONTO, "Toronto", new GeoPoint(43.6667, -79.4, 112.5), false),
				RecordFixture.real(RecordFixture.TORONTO));
		Sample sample = climate.sample(MarkerKind.DE_ICING_END, null, 0, Hemisphere.NORTH,
				new SeasonPeriod(1981, 2010));
		assertThat(List.of(sample.used(), sample.leftOut())).containsExactly(22, 8);
		assertThat(SeasonDay.toDate(sample.quantile(50), 2001)).isEqualTo("2001-04-06");
		assertThat(climate.sample(MarkerKind.DE_ICING_END, null, 3, Hemisphere.NORTH, new SeasonPeriod(1981, 2010))
			.quantile(50)).as("450 m higher").isGreaterThan(sample.quantile(50));
	}

	/**
	 * By hand: 42 °F all day gives 10 a day above 32 °F, so 200 come on the twentieth day
	 * from 15 February, or from 15 August in the south: the count of the model for
	 * crabgrass of Michigan State University.
	 */
	@ParameterizedTest
	@EnumSource(Hemisphere.class)
	void heatForCrabgrassCountsFrom15February(Hemisphere hemisphere) {
		DailyRecord.Builder builder = DailyRecord.builder();
		for (LocalDate day = LocalDate.of(2020, 1, 1); day.getYear() < 2023; day = day.plusDays(1)) {
			// 42 °F is 5.56 °C, kept as 5.6, which gives 10.08 a day.
			builder.set(Element.TMIN, day, 46);
			builder.set(Element.TMAX, day, 66);
		}
		HeatGoal goal = new HeatGoal(200, MonthDay.of(2, 15));
		SeasonOutcome outcome = DegreeDaySearch.reach(builder.build(), new Season(2021, hemisphere),
				HeatMeasure.average(32, true), goal, 0);
		assertThat(outcome.date()).isEqualTo((hemisphere == Hemisphere.NORTH) ? "2021-03-06" : "2021-09-03");
	}

	@Test
	void daylightNeedsNoStation() {
		PlaceMarkers place = new DaylitPlace(new GeoPoint(40.7789, -73.9692, 40),
				new BlendedPlace(Hemisphere.NORTH, List.of()));
		MarkerKey key = MarkerKey.of(MarkerKind.DAYLIGHT_LENGTHENS_TO, DayLength.parse("14h"));
		SeasonMarker marker = place.on(key, 2027).orElseThrow();
		assertThat(marker.earliest()).isEqualTo(marker.date()).isEqualTo(marker.latest());
		assertThat(marker.explanation().label()).isEqualTo("Daylight lengthens to 14 hours");
		assertThat(marker.explanation().steps().get(0).value()).matches("14 h [0-3] min|14 hours");
		MarkerKey never = MarkerKey.of(MarkerKind.DAYLIGHT_SHORTENS_TO, DayLength.parse("8h30m"));
		assertThat(place.on(never, 2027)).isEqualTo(Optional.empty());
		assertThat(place.whyMissing(never)).contains("8 h 30 min", "always longer");
		MarkerKey ice = new MarkerKey(MarkerKind.DE_ICING_END, null, 50);
		assertThat(place.on(ice, 2027)).isEmpty();
		assertThat(place.whyMissing(ice)).contains("No weather station");
	}

	@Test
	void lengthsThatAreNoneAreRefused() {
		assertThat(DayLength.parse("13h30m").code()).isEqualTo("13h30m");
		for (String text : List.of("14", "24h", "0h", "13h5m", "13h60m", "-3h", "")) {
			assertThatExceptionOfType(BadInput.class).as(text).isThrownBy(() -> DayLength.parse(text));
		}
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> new MarkerKey(MarkerKind.DAYLIGHT_SHORTENS_TO, null, 50));
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> new MarkerKey(MarkerKind.DAYLIGHT_SHORTENS_TO, null, 10, null, DayLength.parse("14h")));
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> new MarkerKey(MarkerKind.GROUND_THAW, null, 50, null, DayLength.parse("14h")));
	}

}
