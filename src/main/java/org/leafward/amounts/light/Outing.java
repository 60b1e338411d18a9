package org.leafward.amounts.light;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.core.light.DailyLight;
import org.leafward.climate.core.water.SunGeometry;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;

/**
 * The time that a plant is outside on a day, by the clock of the place: in the shade
 * around solar noon, when it is warmest, in the sun from the morning on, or all day.
 *
 * @param point the place
 * @param date the day
 * @param zone whose clock
 * @param hours whole hours outside, 1 or more
 * @param from when it goes out, null for all day
 * @param to when it comes in, null for all day
 * @param before part of the day's light that comes before it goes out
 * @param part of the day's light that comes while it is out
 */
record Outing(GeoPoint point, LocalDate date, ZoneId zone, int hours, @Nullable LocalTime from, @Nullable LocalTime to,
		double before, double part) {

	/** Nobody carries trays for longer, however long the day. */
	private static final double LONGEST = 14;

	/** Dew and cold are gone by then, hours. From memory. */
	private static final int AFTER_SUNRISE = 2;

	private static final int QUARTER = 15;

	private static final int QUARTERS = 24 * 4;

	/** China's west is three hours off its clock. */
	private static final double MOST_OFF = 4.5;

	/** So many hours of daylight are a day's outing. */
	static double whole(GeoPoint point, LocalDate date) {
		return Math.min(LONGEST, SunGeometry.dayLength(point.latitude(), date.getDayOfYear()));
	}

	static Outing allDay(GeoPoint point, LocalDate date, ZoneId zone) {
		return new Outing(point, date, zone, (int) Math.max(1, Math.floor(whole(point, date))), null, null, 0, 1);
	}

	static Outing of(GeoPoint point, LocalDate date, ZoneId zone, int hours) {
		if (hours + 0.5 >= whole(point, date)) {
			return allDay(point, date, zone);
		}
		return at(point, date, zone, hours, noon(point, date, zone) - hours / 2.0);
	}

	/** From the milder sun of the morning on: two hours after sunrise, or sooner. */
	static Outing morning(GeoPoint point, LocalDate date, ZoneId zone, int hours) {
		if (hours + 0.5 >= whole(point, date)) {
			return allDay(point, date, zone);
		}
		double noon = noon(point, date, zone);
		double dayLength = SunGeometry.dayLength(point.latitude(), date.getDayOfYear());
		return at(point, date, zone, hours, Math.min(noon - hours / 2.0, noon - dayLength / 2 + AFTER_SUNRISE));
	}

	private static Outing at(GeoPoint point, LocalDate date, ZoneId zone, int hours, double start) {
		int quarters = (int) Math.ceil(start * 4);
		int first = Math.max(0, Math.min(QUARTERS - 1 - 4 * hours, quarters));
		LocalTime from = time(first);
		LocalTime to = time(first + 4 * hours);
		double before = DailyLight.part(point, date, zone, null, from);
		return new Outing(point, date, zone, hours, from, to, before,
				DailyLight.part(point, date, zone, null, to) - before);
	}

	/**
	 * The clock must roughly follow the sun, or no time of day can be told.
	 * @throws BadInput when the zone is another one than the place's
	 */
	static void checkZone(GeoPoint point, LocalDate date, ZoneId zone) {
		if (Math.abs(noon(point, date, zone) - 12) > MOST_OFF) {
			throw new BadInput("time zone %s doesn’t fit %s degrees east".formatted(zone, point.longitude()), "zone",
					"give the time zone of the place; west of Greenwich the longitude is negative");
		}
	}

	/** When the sun is highest, hours by the clock. */
	private static double noon(GeoPoint point, LocalDate date, ZoneId zone) {
		ZoneOffset offset = zone.getRules().getOffset(date.atTime(LocalTime.NOON));
		double ahead = Math.IEEEremainder(point.longitude() - offset.getTotalSeconds() / 240.0, 360) / 15;
		return 12 - ahead - SunGeometry.seasonalCorrection(date.getDayOfYear());
	}

	private static LocalTime time(int quarters) {
		return LocalTime.ofSecondOfDay(quarters * QUARTER * 60L);
	}

	/**
	 * The last quarter of an hour up to which at most so much of the day's light comes.
	 * @param part of the day's light since the plant went out
	 * @return null when not even an hour of it fits, or where the plant is out from
	 * sunrise on only the first two hours, which nobody gets up for
	 */
	@Nullable LocalTime until(double part) {
		int low = (this.from != null) ? quarter(this.from) : 0;
		int high = (this.to != null) ? quarter(this.to) + 1 : QUARTERS;
		while (high - low > 1) {
			int middle = (low + high) / 2;
			if (partUntil(time(middle)) <= part) {
				low = middle;
			}
			else {
				high = middle;
			}
		}
		LocalTime until = time(low);
		int early = 4 * AFTER_SUNRISE;
		boolean longEnough = (this.from != null) ? !until.isBefore(this.from.plusHours(1))
				: low > early && partUntil(time(low - early)) > 0;
		return longEnough ? until : null;
	}

	/** The part of the day's light from going out until a time. */
	double partUntil(LocalTime time) {
		return DailyLight.part(this.point, this.date, this.zone, null, time) - this.before;
	}

	private static int quarter(LocalTime time) {
		return time.toSecondOfDay() / (60 * QUARTER);
	}

}
