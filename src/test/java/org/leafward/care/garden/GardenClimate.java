package org.leafward.care.garden;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import org.leafward.climate.PlaceMarkers;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.core.BlendedPlace;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.DaylitPlace;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.Neighbour;
import org.leafward.climate.core.RecordFixture;
import org.leafward.climate.core.StationClimate;
import org.leafward.measure.GeoPoint;

/**
 * The invented climates of the invented gardens: thirty-one years of days about a yearly
 * wave of temperature, with spells of some days, from which the real code takes the
 * markers. Means and swings are those of real places of that kind, rounded, from memory.
 */
enum GardenClimate {

	/** Lower Michigan, southern Wisconsin, northern Illinois: USDA zone 5 to 6. */
	COOL_INLAND(9.3, 13.5, 20, 5.5, 42.3, -83.7, 260),

	/** Minnesota and North Dakota: zone 3 to 4. */
	COLD_CONTINENTAL(4.8, 18, 18, 5.8, 46.9, -96.8, 275),

	/** A valley of the Rocky Mountains at 2700 m: dry, nights cold all year. */
	ALPINE(3.9, 11.5, 15, 6.8, 39.5, -106, 2700),

	/** South Florida: no freeze in most years. */
	FROST_FREE_COAST(24.8, 4.5, 20, 3.5, 25.8, -80.3, 3),

	/** New York and Long Island: zone 7. */
	ATLANTIC_COAST(12.6, 12.2, 24, 4.2, 40.7, -73.5, 20),

	/** Iowa and Nebraska: zone 5, hot summers. */
	PLAINS(10.5, 15.5, 17, 6, 41.5, -93.6, 290),

	/** Virginia and Tennessee: zone 7, where both kinds of lawn grow. */
	PIEDMONT(14.5, 11, 18, 6.2, 37.5, -78.5, 150),

	/** The tablelands of New South Wales: winter in July, light frosts. */
	SOUTHERN_TABLELAND(13.2, 7.6, 200, 6.8, -35.3, 149.1, 580);

	private static final int FIRST = 1995;

	private static final int LAST = 2025;

	/** Share of a day's departure that is left the next day. */
	private static final double PERSISTENCE = 0.7;

	/** Weather is the more unsteady the farther summer and winter lie apart. */
	private static final double LEAST_DEPARTURE = 1.8;

	private static final double DEPARTURE_BY_SWING = 0.24;

	private static final double WET = 0.3;

	private static final Map<GardenClimate, PlaceMarkers> MADE = new ConcurrentHashMap<>();

	private final double mean;

	private final double swing;

	private final int coldest;

	private final double half;

	private final GeoPoint point;

	/**
	 * Describes a climate.
	 * @param mean mean of the year, °C
	 * @param swing half the way from the coldest to the warmest time of the year, °C
	 * @param coldest day of the year around which it is coldest
	 * @param half half the way from the low to the high of a day, °C
	 */
	GardenClimate(double mean, double swing, int coldest, double half, double latitude, double longitude,
			double elevation) {
		this.mean = mean;
		this.swing = swing;
		this.coldest = coldest;
		this.half = half;
		this.point = new GeoPoint(latitude, longitude, elevation);
	}

	GeoPoint point() {
		return this.point;
	}

	PlaceMarkers markers() {
		return MADE.computeIfAbsent(this, (climate) -> of("INVENTED%03d".formatted(ordinal()), this.point, record()));
	}

	/** Markers of a real station, at its own place; needs the large files. */
	static PlaceMarkers real(StationId station, GeoPoint point) {
		return of(station.value(), point, RecordFixture.real(station));
	}

	private static PlaceMarkers of(String id, GeoPoint point, DailyRecord record) {
		StationClimate climate = new StationClimate(new Station(new StationId(id), "the station", point, true), record);
		return new DaylitPlace(point, new BlendedPlace(point.hemisphere(),
				Neighbour.choose(point, List.of(climate.station()), (station) -> Optional.of(climate))));
	}

	private DailyRecord record() {
		Random random = new Random(1000 + ordinal());
		DailyRecord.Builder builder = DailyRecord.builder();
		double spell = 0;
		for (LocalDate day = LocalDate.of(FIRST, 1, 1); day.getYear() <= LAST; day = day.plusDays(1)) {
			spell = PERSISTENCE * spell + Math.sqrt(1 - PERSISTENCE * PERSISTENCE) * random.nextGaussian();
			double wave = Math.cos(2 * Math.PI * (day.getDayOfYear() - this.coldest) / 365.25);
			double air = this.mean - this.swing * wave + (LEAST_DEPARTURE + DEPARTURE_BY_SWING * this.swing) * spell;
			boolean wet = random.nextDouble() < WET;
			double reach = this.half * (wet ? 0.7 : 1.1) + 0.8 * random.nextGaussian();
			builder.set(Element.TMIN, day, tenths(air - reach));
			builder.set(Element.TMAX, day, tenths(air + Math.max(reach, 1 - reach)));
			builder.set(Element.PRCP, day, wet ? 10 + random.nextInt(150) : 0);
		}
		return builder.build();
	}

	private static int tenths(double celsius) {
		return (int) Math.round(celsius * 10);
	}

}
