package org.leafward.workdays;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.plants.SpeciesId;
import org.leafward.register.NewPlanting;
import org.leafward.register.Placement;
import org.leafward.workdays.GroupDesk.Told;
import org.leafward.workdays.WorkdayDesk.Frame;

/** What a group of tests tells of itself, and when it meets. */
public final class TestCrew {

	/** All days of a week. */
	public static final Set<DayOfWeek> ANY = Set.of(DayOfWeek.values());

	/** So different that some of them need care in any season. */
	private static final List<String> PLANTS = List.of("buxus-sempervirens", "malus-domestica", "hydrangea-macrophylla",
			"thuja-occidentalis", "rhododendron-catawbiense", "solanum-lycopersicum", "vitis-vinifera", "acer-palmatum",
			"picea-glauca", "ilex-opaca", "prunus-persica");

	private TestCrew() {
	}

	/**
	 * What grows on the ground of a crew.
	 * @return plants in the open ground
	 */
	public static List<NewPlanting> garden() {
		return PLANTS.stream()
			.map((plant) -> new NewPlanting(new SpeciesId(plant), plant, 3, LocalDate.of(2020, 5, 1), Placement.GROUND,
					false, false))
			.toList();
	}

	/**
	 * A group that meets at the shed, on any day from nine to twelve.
	 * @param zone its time zone
	 * @param capacity how many can come
	 * @return what is told
	 */
	public static Told told(ZoneId zone, int capacity) {
		return told(zone, capacity, ANY, Set.of(), PlanTerms.USUAL);
	}

	/**
	 * A group that meets at the shed from nine to twelve.
	 * @param zone its time zone
	 * @param capacity how many can come
	 * @param weekdays on which it works
	 * @param away days on which it doesn't
	 * @param terms what it asks of plans
	 * @return what is told
	 */
	public static Told told(ZoneId zone, int capacity, Set<DayOfWeek> weekdays, Set<LocalDate> away, PlanTerms terms) {
		return new Told("Crew", "We dig.", zone, "the shed", weekdays, LocalTime.of(9, 0), LocalTime.of(12, 0),
				capacity, away, terms);
	}

	/**
	 * From nine to twelve at the shed.
	 * @param day on this day
	 * @param capacity how many can come
	 * @param rain the day instead; null for none
	 * @return when and where
	 */
	public static Frame at(LocalDate day, int capacity, @Nullable LocalDate rain) {
		return new Frame(day, LocalTime.of(9, 0), LocalTime.of(12, 0), "the shed", capacity, rain);
	}

}
