package org.leafward.care.core.rule;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskText;
import org.leafward.plants.SpeciesId;

/**
 * One rule of a pack.
 *
 * @param id unique in its pack, lower case with hyphens
 * @param kind what is asked for; {@link TaskKind#RAMP_DAY} exactly when the timing is a
 * {@link Ramp}
 * @param work the kind of work asked for or forbidden
 * @param concern which plantings it is for
 * @param timing when
 * @param variants what holds where practice or law differs; the first that fits counts
 * @param weather what of the weather opens, puts off or withdraws it
 * @param despite the hold-offs, as {@code pack/rule}, that it goes before
 * @param effort how much work it is and what it takes
 * @param text the words
 * @param amounts how much by species, where that differs from the words
 * @param sources where it comes from, at least one
 * @param computes what is worked out for each planting in place of the words about how
 * much; null for nothing
 * @param hurt the temperature at which its plants are hurt, for what is worked out
 */
public record Rule(String id, TaskKind kind, Work work, Concern concern, Timing timing, List<Variant> variants,
		Weather weather, Set<String> despite, Effort effort, TaskText text, Map<SpeciesId, String> amounts,
		List<Source> sources, @Nullable Computes computes, Hurt hurt) {

	/**
	 * A rule whose amounts are all in its words.
	 * @param id unique in its pack
	 * @param kind what is asked for
	 * @param work the kind of work asked for or forbidden
	 * @param concern which plantings it is for
	 * @param timing when
	 * @param variants what holds where practice or law differs
	 * @param weather what of the weather opens, puts off or withdraws it
	 * @param despite the hold-offs that it goes before
	 * @param effort how much work it is and what it takes
	 * @param text the words
	 * @param amounts how much by species, where that differs from the words
	 * @param sources where it comes from, at least one
	 */
	public Rule(String id, TaskKind kind, Work work, Concern concern, Timing timing, List<Variant> variants,
			Weather weather, Set<String> despite, Effort effort, TaskText text, Map<SpeciesId, String> amounts,
			List<Source> sources) {
		this(id, kind, work, concern, timing, variants, weather, despite, effort, text, amounts, sources, null,
				Hurt.UNKNOWN);
	}

	public Rule {
		variants = List.copyOf(variants);
		despite = Set.copyOf(despite);
		amounts = Map.copyOf(amounts);
		sources = List.copyOf(sources);
		if ((kind == TaskKind.RAMP_DAY) != (timing instanceof Ramp)) {
			throw new IllegalArgumentException("rule %s: a ramp, and only a ramp, has steps".formatted(id));
		}
		if (sources.isEmpty()) {
			throw new IllegalArgumentException("rule %s has no source".formatted(id));
		}
		if (timing instanceof DayByDay && weather.opens().isEmpty()) {
			throw new IllegalArgumentException("rule %s: no weather opens its days".formatted(id));
		}
	}

	public String title() {
		return this.text.title();
	}

	/**
	 * Whether it is for single nights with a low. Such a night begins on the evening of
	 * the day that the rule picks, and its minimum belongs to the day after.
	 * @return true when the weather picks its days by a low
	 */
	public boolean beforeANight() {
		return this.timing instanceof DayByDay
				&& this.weather.opens().stream().anyMatch((asks) -> asks.state().equals("low-ahead"));
	}

	/**
	 * What holds at a site in place of the rule's own ends.
	 * @param region code of its region, empty when not known
	 * @param county its county, empty when not known
	 * @return empty where nothing differs
	 */
	public Optional<Variant> variantAt(String region, String county) {
		return this.variants.stream().filter((variant) -> variant.where().contains(region, county)).findFirst();
	}

}
