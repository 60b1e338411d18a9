package org.leafward.quick.core;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.function.IntFunction;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;
import org.leafward.plants.Species;
import org.springframework.modulith.NamedInterface;

/**
 * When a plant went or goes into the ground, for those who tell only what grows: rules
 * ask for it. What lives for a season goes out by the freezes of the place, the rest has
 * stood there for years. All of it is common practice.
 *
 * @param today the day of the place
 * @param hemisphere whose seasons apply
 * @param freezes the last freezes of a spring, by the year of the season
 */
@NamedInterface("drawers")
public record PlantedWhen(LocalDate today, Hemisphere hemisphere, IntFunction<SpringFreezes> freezes) {

	/** Years after which nobody waters a tree as a young one. */
	private static final int SETTLED = 6;

	/** Months since whoever says "lately" planted; on the careful side. */
	private static final int LATELY = 6;

	private static final int WEEK = 7;

	/** Days after setting out up to which the season counts as begun. */
	private static final int BEGUN = 60;

	/** Garlic goes into the ground in the middle of fall. */
	private static final int FALL_DAY = 15;

	/**
	 * The date of a planting.
	 * @param species what grows
	 * @param young whether it was planted within the last two years
	 * @return in the past for what lasts; for what lives a season the day on which it is
	 * set out or sown, this season's up to two months after it, else the next
	 */
	public LocalDate of(Species species, boolean young) {
		if (species.groups().contains("garlic")) {
			return lastFall();
		}
		if (lastsASeason(species)) {
			Season season = Season.containing(this.today, this.hemisphere);
			LocalDate now = setOut(species, season);
			return this.today.isAfter(now.plusDays(BEGUN)) ? setOut(species, season.next()) : now;
		}
		return young ? this.today.minusMonths(LATELY) : this.today.minusYears(SETTLED);
	}

	/**
	 * Whether a species goes into the ground anew each season.
	 * @param species the species
	 * @return true for annuals, vegetables and bulbs that are lifted
	 */
	public static boolean lastsASeason(Species species) {
		return has(species, "annual", "vegetable", "transplant", "tender-bulb", "warm-bulb", "garlic")
				&& !species.groups().contains("perennial-vegetable");
	}

	private static boolean has(Species species, String... groups) {
		return List.of(groups).stream().anyMatch(species.groups()::contains);
	}

	private LocalDate setOut(Species species, Season season) {
		SpringFreezes spring = this.freezes.apply(season.year());
		if (has(species, "vegetable-very-tender", "annual-very-tender", "warm-bulb")) {
			return spring.safe().plusDays(2 * WEEK);
		}
		if (has(species, "vegetable-tender", "annual-tender", "tender-bulb")) {
			return spring.safe();
		}
		if (has(species, "vegetable-hardy", "annual-hardy")) {
			return spring.usual().minusDays(3 * WEEK);
		}
		return spring.usual();
	}

	private LocalDate lastFall() {
		Month month = (this.hemisphere == Hemisphere.NORTH) ? Month.OCTOBER : Month.APRIL;
		LocalDate here = LocalDate.of(this.today.getYear(), month, FALL_DAY);
		return here.isAfter(this.today) ? here.minusYears(1) : here;
	}

}
