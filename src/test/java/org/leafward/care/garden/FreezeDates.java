package org.leafward.care.garden;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.OptionalDouble;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.PlaceMarkers;
import org.leafward.climate.SeasonMarker;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.Explanation;
import org.leafward.support.SharedData;

/**
 * A place of which nothing is known but its published freeze dates at 32 °F: the middle
 * date and that of 90 %. The one of 10 % is taken to lie as far on the other side.
 *
 * @param name the place
 * @param last middle date of the last spring freeze, and days from it to that of 90 %
 * @param first the same of the first fall freeze
 */
record FreezeDates(String name, Middle last, Middle first) implements PlaceMarkers {

	/** A middle date and the days from it to the date of 90 %. */
	record Middle(String monthDay, int toNinety) {

		static Middle of(String middle, String ninety) {
			return new Middle(middle, (int) ChronoUnit.DAYS.between(LocalDate.parse(Garden.SEASON + "-" + middle),
					LocalDate.parse(Garden.SEASON + "-" + ninety)));
		}

	}

	static FreezeDates of(String place) {
		String[] row = SharedData.table("calendars/freeze-dates.csv")
			.stream()
			.filter((one) -> one[0].equals(place))
			.findFirst()
			.orElseThrow(() -> new AssertionError("no freeze dates of " + place));
		return new FreezeDates(place, Middle.of(row[2], row[3]), Middle.of(row[4], row[5]));
	}

	@Override
	public Optional<SeasonMarker> on(MarkerKey key, int season) {
		boolean spring = key.kind() == MarkerKind.LAST_SPRING_FREEZE;
		if (!spring && key.kind() != MarkerKind.FIRST_FALL_FREEZE || key.threshold() == null
				|| Math.abs(key.threshold().celsius()) > 0.01) {
			return Optional.empty();
		}
		Middle middle = spring ? this.last : this.first;
		int share = switch (key.probability()) {
			case 50 -> 0;
			case 90 -> 1;
			case 10 -> -1;
			default -> throw new AssertionError("no date for " + key.code());
		};
		LocalDate date = LocalDate.parse(season + "-" + middle.monthDay()).plusDays((long) share * middle.toNinety());
		return Optional.of(new SeasonMarker(key, season, date, date, date, Explanation.of(key.code(), this.name)));
	}

	@Override
	public String whyMissing(MarkerKey key) {
		return "Only freeze dates are published for " + this.name + ".";
	}

	@Override
	public OptionalDouble yearsWithFreeze(TemperatureThreshold threshold) {
		return OptionalDouble.empty();
	}

}
