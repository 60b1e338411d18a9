package org.leafward.care.core.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.rule.Anchor;
import org.leafward.care.core.rule.Concern;
import org.leafward.care.core.rule.PhaseAnchor;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.Variant;
import org.leafward.care.core.rule.Where;
import org.leafward.care.core.rule.YearsSincePlanting;
import org.leafward.plants.Species;

/**
 * A task and a hold-off from the same work.
 *
 * @param task the do or ramp
 * @param holdOff the hold-off
 */
record Pair(Rule task, Rule holdOff) {

	/**
	 * A site by region and county.
	 *
	 * @param region code of the region, empty for any that no rule of the pair names
	 * @param county the county, likewise
	 * @param holds whether the hold-off is for it
	 */
	record Spot(String region, String county, boolean holds) {

		Optional<Variant> of(Rule rule) {
			return rule.variantAt(this.region, this.county);
		}

	}

	private Concern wanted() {
		return this.task.concern();
	}

	private Concern forbidden() {
		return this.holdOff.concern();
	}

	boolean aboutSite() {
		return !wanted().site().isEmpty();
	}

	boolean addresses(Species plant) {
		return wanted().addresses(plant) && forbidden().addresses(plant);
	}

	/** Whether both can be for one planting, its species aside, or for one site. */
	boolean canMeet() {
		return aboutSite() == !forbidden().site().isEmpty() && either(wanted().placement(), forbidden().placement())
				&& either(wanted().wintersIndoors(), forbidden().wintersIndoors())
				&& either(wanted().saltExposed(), forbidden().saltExposed()) && ages()
				&& (wanted().soils().isEmpty() || forbidden().soils().isEmpty()
						|| !Collections.disjoint(wanted().soils(), forbidden().soils()));
	}

	private boolean ages() {
		YearsSincePlanting one = wanted().years();
		YearsSincePlanting other = forbidden().years();
		int from = Math.max(one.from(), other.from());
		boolean once = this.task.timing().oncePerPlanting() || this.holdOff.timing().oncePerPlanting();
		return from < Math.min(one.below(), other.below()) && !(once && from > 0);
	}

	private static boolean either(@Nullable Object one, @Nullable Object other) {
		return one == null || other == null || one.equals(other);
	}

	/**
	 * Whether the hold-off is for every planting of a species that the task is for,
	 * whatever the weather.
	 */
	boolean holdsForAllOfTask() {
		return this.holdOff.weather().opens().isEmpty() && implied(wanted().placement(), forbidden().placement())
				&& implied(wanted().wintersIndoors(), forbidden().wintersIndoors())
				&& implied(wanted().saltExposed(), forbidden().saltExposed())
				&& forbidden().years().from() <= wanted().years().from()
				&& (forbidden().years().below() >= wanted().years().below() || this.task.timing().oncePerPlanting())
				&& (forbidden().soils().isEmpty()
						|| (!wanted().soils().isEmpty() && forbidden().soils().containsAll(wanted().soils())))
				&& wanted().site().containsAll(forbidden().site())
				&& (forbidden().freezing() == null || forbidden().freezing().follows(wanted().freezing()));
	}

	private static boolean implied(@Nullable Object given, @Nullable Object needed) {
		return needed == null || Objects.equals(given, needed);
	}

	/** Every kind of site that the two rules tell apart and the task is for. */
	List<Spot> spots() {
		List<Where> places = Stream
			.concat(Stream.of(wanted().where(), forbidden().where()),
					Stream.concat(this.task.variants().stream(), this.holdOff.variants().stream()).map(Variant::where))
			.toList();
		Set<String> regions = names(places.stream().flatMap((where) -> where.regions().stream()));
		Set<String> counties = names(places.stream().flatMap((where) -> where.counties().stream()));
		List<Spot> spots = new ArrayList<>();
		for (String region : regions) {
			for (String county : counties) {
				if (wanted().where().contains(region, county)) {
					spots.add(new Spot(region, county, forbidden().where().contains(region, county)));
				}
			}
		}
		return spots;
	}

	private static Set<String> names(Stream<String> written) {
		Set<String> names = written.collect(Collectors.toCollection(TreeSet::new));
		names.add("");
		return names;
	}

	/** A hold-off that hangs on the planting date comes once. */
	boolean everySeason() {
		return !this.holdOff.timing().oncePerPlanting();
	}

	/**
	 * Whether the two can be dated on one scale: planting dates, events and soil tests
	 * may lie anywhere in the year, so they are only compared with the same.
	 */
	boolean datedAlike() {
		Set<String> free = anchors().map(Anchor::movable).collect(Collectors.toSet());
		return free.size() == 1;
	}

	boolean differsBySpecies() {
		return anchors().anyMatch((anchor) -> anchor instanceof PhaseAnchor || !anchor.days().bySpecies().isEmpty());
	}

	private Stream<Anchor> anchors() {
		return Stream.concat(anchors(this.task), anchors(this.holdOff));
	}

	private static Stream<Anchor> anchors(Rule rule) {
		Stream<Optional<Variant>> variants = Stream.concat(Stream.of(Optional.empty()),
				rule.variants().stream().map(Optional::of));
		return variants.map((variant) -> ReferenceDates.Ends.of(rule.timing(), variant))
			.flatMap((ends) -> Stream.of(ends.from(), ends.to()));
	}

}
