package org.leafward.climate;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.util.concurrent.TimeUnit;
import org.leafward.climate.core.FreezeTable;
import org.leafward.climate.core.SeasonPeriod;
import org.leafward.climate.core.StationClimate;
import org.leafward.climate.source.ghcn.GhcnReader;
import org.leafward.measure.GeoPoint;
import org.leafward.support.SharedData;
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

/** A 150-year station file, from its bytes to its freeze dates. Target: under 150 ms warm on one core. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class FreezeBenchmark {

	private static final StationId ID = new StationId("USW00094728");

	private static final Station STATION = new Station(ID, "Central Park", new GeoPoint(40.7789, -73.9692, 39.6), false);

	private byte[] file;

	/** Reads the file once, so that the disk is not measured. */
	@Setup
	public void load() throws IOException {
		this.file = Files.readAllBytes(SharedData.file("climate/USW00094728.dly.gz"));
	}

	/** Unpacks, reads every element, and computes the dates for six thresholds over 1870 to 2018. */
	@Benchmark
	public Object fileToFreezeDates() throws IOException {
		StationClimate climate = new StationClimate(STATION,
				new GhcnReader().read(new ByteArrayInputStream(this.file), ID, "Central Park").record());
		Object[] tables = new Object[6];
		String[] thresholds = { "36F", "32F", "28F", "24F", "20F", "0C" };
		for (int i = 0; i < thresholds.length; i++) {
			tables[i] = FreezeTable.of(climate, new SeasonPeriod(1870, 2018), TemperatureThreshold.parse(thresholds[i]));
		}
		return tables;
	}

}
