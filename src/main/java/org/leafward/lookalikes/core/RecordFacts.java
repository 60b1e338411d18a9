package org.leafward.lookalikes.core;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What the record holds that may bear on an injury, gathered but not yet judged.
 *
 * @param seen day on which the injury was first seen
 * @param south whether the place is on the southern hemisphere
 * @param plant the species
 * @param planting the planting; null for a species alone
 * @param works what was done to it in the fifteen months before, the latest first
 * @param hardening days of its hardening off in the thirty days before
 * @param days the weather of the 210 days before, in order; empty when no station can
 * tell
 * @param drought the drought on the day; null when no station can tell
 * @param soil the latest soil test of the last three years; null when there is none
 * @param freezes median freezes of the year of the day; null when no station can tell
 */
public record RecordFacts(LocalDate seen, boolean south, Plant plant, @Nullable Stand planting, List<Work> works,
		Hardening hardening, List<Day> days, @Nullable Drought drought, @Nullable Soil soil,
		Span.@Nullable Freezes freezes) {

	/**
	 * A species as far as it matters here.
	 *
	 * @param genus first word of its botanical name
	 * @param groups its plant groups
	 * @param traits its traits
	 * @param troubles what the catalogue says it suffers from
	 * @param bearsSoilSalt low, moderate or high; null when not known
	 * @param bearsSaltSpray likewise
	 */
	public record Plant(String genus, Set<String> groups, Set<String> traits, List<String> troubles,
			@Nullable String bearsSoilSalt, @Nullable String bearsSaltSpray) {

		public Plant {
			groups = Set.copyOf(groups);
			traits = Set.copyOf(traits);
			troubles = List.copyOf(troubles);
		}

	}

	/**
	 * A planting as far as it matters here.
	 *
	 * @param plantedOn day it was planted or set out
	 * @param saltExposed whether de-icing salt reaches it
	 * @param indoorsBefore whether it was raised or wintered indoors
	 * @param windy whether its site lies open to the wind
	 */
	public record Stand(LocalDate plantedOn, boolean saltExposed, boolean indoorsBefore, boolean windy) {
	}

	/**
	 * Work in the care log.
	 *
	 * @param kind code of the kind of work, for example {@code prune}
	 * @param day on which
	 * @param heldOff whether the calendar asked for none of it on that day
	 */
	public record Work(String kind, LocalDate day, boolean heldOff) {
	}

	/**
	 * How hardening off went.
	 *
	 * @param done days of the ramp that were noted as done
	 * @param left days that were skipped or passed without a note
	 */
	public record Hardening(int done, int left) {

		/** There was none to do. */
		public static final Hardening NONE = new Hardening(0, 0);

	}

	/**
	 * The weather of a day; null stands for what nobody measured.
	 *
	 * @param date the day
	 * @param minimum °C
	 * @param maximum °C
	 * @param rain mm, melted snow included
	 * @param wind mean speed, m/s
	 * @param frozen whether the ground was frozen at 4 inches
	 */
	public record Day(LocalDate date, @Nullable Double minimum, @Nullable Double maximum, @Nullable Double rain,
			@Nullable Double wind, @Nullable Boolean frozen) {
	}

	/**
	 * The drought on a day.
	 *
	 * @param lastDay last day of rain that counts
	 * @param severity 0 for abnormally dry to 4; null when there is no drought
	 */
	public record Drought(LocalDate lastDay, @Nullable Integer severity) {
	}

	/**
	 * A soil test.
	 *
	 * @param day on which the sample was taken
	 * @param acidity pH
	 * @param conductivity of the saturation extract, dS/m; null in another extract
	 * @param slow whether water leaves the bed slowly or not at all; null when nobody
	 * looked
	 */
	public record Soil(LocalDate day, double acidity, @Nullable Double conductivity, @Nullable Boolean slow) {
	}

	public RecordFacts {
		works = List.copyOf(works);
		days = List.copyOf(days);
	}

}
