package org.leafward.climate;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.leafward.climate.core.StationClimate;
import org.leafward.climate.core.water.BalanceDays;
import org.leafward.climate.core.water.BedBalance;
import org.leafward.climate.core.water.DailyWater;
import org.leafward.climate.core.water.NearStation;
import org.leafward.climate.core.water.PlaceWeather;
import org.leafward.climate.core.water.RootZone;
import org.leafward.climate.core.water.RootZoneBalance;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A year of the water in one bed, day by day. Target: under 100 microseconds. */
@State(Scope.Benchmark)
@BenchmarkMode({ Mode.AverageTime, Mode.SampleTime })
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class WaterBenchmark {

	private static final LocalDate FROM = LocalDate.of(2024, 1, 1);

	private static final LocalDate TO = LocalDate.of(2024, 12, 31);

	private final WaterBed bed = new WaterBed("silt loam", 0.4, 0.7, 0.5, Map.of(LocalDate.of(2024, 7, 4), 20.0));

	private StationClimate station;

	private WeatherSeries weather;

	private DailyWater days;

	private BalanceDays out;

	/** Makes up the weather of a place and its evapotranspiration. */
	@Setup
	public void weather() {
		this.station = new StationClimate(BenchWeather.station(1), BenchWeather.record(1));
		this.weather = series();
		double[] reference = new double[this.weather.days().size()];
		double[] rain = new double[reference.length];
		double[] factor = new double[reference.length];
		for (int at = 0; at < reference.length; at++) {
			WeatherSeries.Day day = this.weather.days().get(at);
			reference[at] = (day.evapotranspiration() != null) ? day.evapotranspiration() : 0;
			rain[at] = (day.rain() != null) ? day.rain() : 0;
			factor[at] = 0.7;
		}
		this.days = new DailyWater(reference, factor, rain, new double[reference.length]);
		this.out = BalanceDays.of(reference.length);
	}

	private WeatherSeries series() {
		return PlaceWeather.of(this.station.station().point(),
				List.of(NearStation.at(this.station.station().point(), this.station)), FROM, TO);
	}

	/** The balance itself. */
	@Benchmark
	public double balance() {
		return RootZoneBalance.run(BedBalance.zone(this.bed), 0, this.days, this.out);
	}

	/** The balance with a row for each day and the explanation, as the API hands it out. */
	@Benchmark
	public Object balanceShown() {
		return BedBalance.of(this.bed, this.weather, FROM);
	}

	/** The same, with the evapotranspiration made anew from the station's record. */
	@Benchmark
	public Object recordToBalanceShown() {
		return BedBalance.of(this.bed, series(), FROM);
	}

}
