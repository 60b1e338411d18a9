package org.leafward.climate.core.water;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.WaterBed;
import org.leafward.climate.WaterView;
import org.leafward.climate.WeatherSeries;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.StationClimate;
import org.leafward.measure.BadInput;
import org.leafward.measure.Explanation;
import org.leafward.measure.GeoPoint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

class PlaceWeatherTests {

	private static final LocalDate FIRST = LocalDate.of(2027, 6, 1);

	private static final GeoPoint PLACE = new GeoPoint(45, 10, 1100);

	private static StationClimate station(String id, GeoPoint point, DailyRecord record) {
		return new StationClimate(new Station(new StationId(id), "Station " + id, point, false), record);
	}

	private static void day(DailyRecord.Builder builder, int day, @Nullable Integer low, @Nullable Integer high,
			@Nullable Integer rain, @Nullable Integer wind) {
		set(builder, Element.TMIN, day, low);
		set(builder, Element.TMAX, day, high);
		set(builder, Element.PRCP, day, rain);
		set(builder, Element.AWND, day, wind);
	}

	private static void set(DailyRecord.Builder builder, Element element, int day, @Nullable Integer value) {
		if (value != null) {
			builder.set(element, FIRST.plusDays(day), value);
		}
	}

	private static List<NearStation> stations() {
		DailyRecord.Builder near = DailyRecord.builder();
		day(near, 0, 120, 240, 0, null);
		day(near, 1, 120, 240, 31, 30);
		day(near, 2, 120, null, null, null);
		DailyRecord.Builder far = DailyRecord.builder();
		day(far, 1, 0, 10, 999, null);
		day(far, 2, 150, 250, 50, null);
		return List.of(NearStation.at(PLACE, station("XX000000001", new GeoPoint(45.1, 10, 100), near.build())),
				NearStation.at(PLACE, station("XX000000002", new GeoPoint(45.9, 10, 1100), far.build())));
	}

	@Test
	void daysComeFromTheNearestStationMovedToThePlacesHeight() {
		WeatherSeries series = PlaceWeather.of(PLACE, stations(), FIRST, FIRST.plusDays(3));
		assertThat(series.days()).hasSize(4);
		ReferenceEt.Ground ground = new ReferenceEt.Ground(45, 1100, Setting.INTERIOR);
		WeatherSeries.Day first = series.days().get(0);
		// 1000 m higher: 6.5 °C colder.
		assertThat(first.minimum()).isCloseTo(5.5, within(1e-9));
		assertThat(first.maximum()).isCloseTo(17.5, within(1e-9));
		assertThat(first.rain()).isEqualTo(0);
		assertThat(first.method()).isEqualTo("Hargreaves-Samani");
		assertThat(first.substitutes()).isEmpty();
		assertThat(first.evapotranspiration())
			.isCloseTo(HargreavesSamani.ofDay(5.5, 17.5, SunGeometry.extraterrestrial(45, 152)), within(1e-9));
		WeatherSeries.Day second = series.days().get(1);
		assertThat(second.rain()).as("as it fell").isEqualTo(3.1);
		assertThat(second.method()).isEqualTo("Penman-Monteith");
		assertThat(second.substitutes()).hasSize(2);
		assertThat(second.evapotranspiration()).isCloseTo(
				ReferenceEt.of(new WeatherDay(153, 5.5, 17.5, null, null, new Wind(3, 10)), ground).millimetres(),
				within(1e-9));
		WeatherSeries.Day third = series.days().get(2);
		assertThat(third.station()).as("the near one lacks a maximum").isEqualTo(new StationId("XX000000002"));
		assertThat(third.minimum()).as("at the same height").isEqualTo(15);
		assertThat(third.rain()).isEqualTo(5);
		WeatherSeries.Day last = series.days().get(3);
		assertThat(last.evapotranspiration()).isNull();
		assertThat(last.rain()).isNull();
	}

	@Test
	void theExplanationCountsWhatItWasMadeFrom() {
		Explanation explanation = PlaceWeather.of(PLACE, stations(), FIRST, FIRST.plusDays(3)).explanation();
		assertThat(explanation.value()).isEqualTo("3 of 4 days with temperatures, 3 with rain");
		assertThat(explanation.steps()).extracting(Explanation::label)
			.containsExactly("Station XX000000001 (XX000000001)", "Station XX000000002 (XX000000002)",
					"Evapotranspiration by Penman-Monteith", "Evapotranspiration by Hargreaves-Samani",
					Substitute.DEW_POINT_FROM_MINIMUM.words(), Substitute.RADIATION_FROM_TEMPERATURES.words());
		assertThat(explanation.steps()).extracting(Explanation::value)
			.containsExactly("temperatures of 2 days, rain of 2 days", "temperatures of 1 day, rain of 1 day", "1 day",
					"2 days", "1 day", "1 day");
		assertThat(explanation.steps().get(0).detail()).contains("6.50 °C colder");
	}

	@Test
	void stationsWithoutADayOfThePeriodAreLeftOut() {
		List<NearStation> all = stations();
		List<Station> known = all.stream().map((near) -> near.climate().station()).toList();
		assertThat(NearStation.choose(PLACE, known,
				(station) -> all.stream()
					.map(NearStation::climate)
					.filter((climate) -> climate.station().equals(station))
					.findFirst(),
				FIRST, FIRST))
			.extracting((near) -> near.climate().station().id().value())
			.containsExactly("XX000000001");
		assertThat(NearStation.choose(PLACE, known, (station) -> Optional.empty(), FIRST, FIRST)).isEmpty();
	}

	@Test
	void aBedFollowsTheBalance() {
		WeatherSeries weather = PlaceWeather.of(PLACE, stations(), FIRST, FIRST.plusDays(3));
		WaterBed bed = new WaterBed("loam", 0.2, 0.5, 0.5, Map.of(FIRST.plusDays(3), 1.0));
		WaterView view = BedBalance.of(bed, weather, FIRST.plusDays(1)).orElseThrow();
		// Loam holds 155 mm per metre, the middle of 130 to 180.
		assertThat(view.availableMillimetres()).isCloseTo(31, within(1e-9));
		assertThat(view.days()).extracting(WaterView.Day::date)
			.containsExactly(FIRST.plusDays(1), FIRST.plusDays(2), FIRST.plusDays(3));
		double firstLoss = 0.5 * weather.days().get(0).evapotranspiration();
		WaterView.Day second = view.days().get(0);
		assertThat(second.percolation()).isCloseTo(3.1 - firstLoss, within(1e-9));
		assertThat(second.demand()).isCloseTo(0.5 * weather.days().get(1).evapotranspiration(), within(1e-9));
		assertThat(second.depletion()).isCloseTo(second.demand(), within(1e-9));
		assertThat(second.wetEnough()).isTrue();
		assertThat(second.dryDays()).isEqualTo(2);
		WaterView.Day last = view.days().get(2);
		assertThat(last.complete()).isFalse();
		assertThat(last.watering()).isEqualTo(1);
		assertThat(last.dryDays()).as("rain unknown").isZero();
		assertThat(last.demand()).as("the nearest known day stands in").isEqualTo(view.days().get(1).demand());
		assertThat(view.explanation().steps()).hasSize(5);
		assertThat(view.explanation().steps().get(3).value())
			.isEqualTo("1 of evapotranspiration bridged, 1 of rain taken as dry");
	}

	@Test
	void bedsOutOfBoundsAreRefused() {
		WeatherSeries weather = PlaceWeather.of(PLACE, stations(), FIRST, FIRST);
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> BedBalance.of(new WaterBed("peat", 0.2, 0.5, 0.5, Map.of()), weather, FIRST));
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> BedBalance.of(new WaterBed("loam", 0, 0.5, 0.5, Map.of()), weather, FIRST))
			.withMessageContaining("rootDepthMetres 0.0");
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> BedBalance.of(new WaterBed("loam", 1, 0.5, 0.5, Map.of(FIRST, -1.0)), weather, FIRST));
		WeatherSeries none = PlaceWeather.of(PLACE, List.of(), FIRST, FIRST);
		assertThat(BedBalance.of(new WaterBed("loam", 1, 0.5, 0.5, Map.of()), none, FIRST)).isEmpty();
	}

}
