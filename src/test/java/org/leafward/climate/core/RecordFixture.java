package org.leafward.climate.core;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import org.leafward.climate.StationId;
import org.leafward.climate.source.ghcn.GhcnReader;
import org.leafward.support.SharedData;

/** Real and made-up daily records for tests. */
public final class RecordFixture {

	public static final StationId TORONTO = new StationId("CA006158350");

	public static final StationId CENTRAL_PARK = new StationId("USW00094728");

	private static final Map<StationId, DailyRecord> REAL = new ConcurrentHashMap<>();

	private RecordFixture() {
	}

	/**
	 * The real record of a station, when the reference data are there.
	 * @param station one of the constants
	 * @return the record
	 */
	public static DailyRecord real(StationId station) {
		return REAL.computeIfAbsent(station, (id) -> {
			try (InputStream stream = Files.newInputStream(SharedData.file("climate/" + id.value() + ".dly.gz"))) {
				return new GhcnReader().read(stream, id, "file").record();
			}
			catch (IOException ex) {
				throw new UncheckedIOException(ex);
			}
		});
	}

	/**
	 * A made-up record: a year's wave of temperature with noise, always the same for the
	 * same seed.
	 * @param seed of the noise
	 * @param from first year, from 1 January
	 * @param to last year, to 31 December
	 * @param meanCelsius mean minimum of the year
	 * @param south whether July is the coldest month
	 * @return the record, minima and maxima on every day
	 */
	public static DailyRecord wave(long seed, int from, int to, double meanCelsius, boolean south) {
		Random random = new Random(seed);
		DailyRecord.Builder builder = DailyRecord.builder();
		for (LocalDate day = LocalDate.of(from, 1, 1); day.getYear() <= to; day = day.plusDays(1)) {
			double wave = -12 * Math.cos(2 * Math.PI * (day.getDayOfYear() - 20) / 365.25);
			int low = (int) Math.round(10 * (meanCelsius + (south ? -wave : wave) + random.nextGaussian() * 4));
			builder.set(Element.TMIN, day, low);
			builder.set(Element.TMAX, day, low + 90);
		}
		return builder.build();
	}

	/**
	 * A record with the same minimum on every day, but for some.
	 * @param from first day
	 * @param to last day
	 * @param tenths the minimum
	 * @param others days with another minimum, or null for a missing one
	 * @return the record
	 */
	public static DailyRecord constant(String from, String to, int tenths, Map<String, Integer> others) {
		DailyRecord.Builder builder = DailyRecord.builder();
		for (LocalDate day = LocalDate.parse(from); !day.isAfter(LocalDate.parse(to)); day = day.plusDays(1)) {
			Integer value = others.containsKey(day.toString()) ? others.get(day.toString()) : Integer.valueOf(tenths);
			if (value != null) {
				builder.set(Element.TMIN, day, value);
			}
		}
		return builder.build();
	}

}
