package org.leafward.care.pack;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A rule pack as written. Components are named like the entries of the schema
 * rulepack-1.json, which says what they mean.
 */
record PackDraft(String pack, int version, String title, String region, List<RuleDraft> rules) {

	/** A rule as written. */
	record RuleDraft(String id, String kind, String work, String title, ConcernDraft concerns,
			@Nullable AnchorDraft from, @Nullable AnchorDraft to, @Nullable Integer everyDays,
			@Nullable Integer shortestDays, @Nullable Boolean untilPlanted, @Nullable Boolean dayByDay,
			@Nullable Integer daysAhead, @Nullable WeatherDraft weather, @Nullable List<VariantDraft> regions,
			@Nullable List<String> despite, @Nullable EffortDraft effort, @Nullable List<String> skills,
			@Nullable List<String> tools, @Nullable RampDraft ramp, @Nullable String computes, @Nullable String hurtAt,
			@Nullable Map<String, String> hurtAtBySpecies, WordsDraft text, List<SourceDraft> sources) {
	}

	/** The plantings as written. */
	record ConcernDraft(@Nullable List<String> groups, @Nullable List<String> species, @Nullable List<String> traits,
			@Nullable List<String> exceptGroups, @Nullable List<String> exceptSpecies, @Nullable String placement,
			@Nullable Boolean wintersIndoors, @Nullable Boolean saltExposed, @Nullable YearsDraft yearsSincePlanting,
			@Nullable List<String> soils, @Nullable WhereDraft where, @Nullable List<String> site,
			@Nullable FreezingDraft whereItFreezes) {
	}

	/** How cold and how often, as written. */
	record FreezingDraft(String to, int oneYearIn) {
	}

	/** Bounds on age as written. */
	record YearsDraft(@Nullable Integer from, @Nullable Integer below) {
	}

	/** An anchor as written. */
	record AnchorDraft(@Nullable String marker, @Nullable String threshold,
			@Nullable Map<String, String> thresholdBySpecies, @Nullable String base, @Nullable Integer sum,
			@Nullable String start, @Nullable String daylight, @Nullable Integer probability, @Nullable String phase,
			@Nullable String event, @Nullable String soilTest, @Nullable Boolean lastPart,
			@Nullable Boolean plantingDate, @Nullable String dayOfYear, @Nullable String whyFixed,
			@Nullable Integer days, @Nullable Map<String, Integer> daysBySpecies, @Nullable String season,
			@Nullable String notBefore, @Nullable String notAfter, @Nullable AnchorDraft noSoonerThan) {
	}

	/** Places as written. */
	record WhereDraft(@Nullable List<String> regions, @Nullable List<String> counties) {
	}

	/** What holds elsewhere as written. */
	record VariantDraft(WhereDraft where, @Nullable AnchorDraft from, @Nullable AnchorDraft to,
			@Nullable Boolean leaveOut, String why, @Nullable List<SourceDraft> sources) {
	}

	/** Conditions of the weather as written. */
	record WeatherDraft(@Nullable List<StateDraft> opens, @Nullable List<StateDraft> postpones,
			@Nullable List<StateDraft> withdraws) {
	}

	/** A state of the weather as written. */
	record StateDraft(String state, @Nullable String atMost, @Nullable String atLeast, @Nullable Integer days) {
	}

	/** Work as written. */
	record EffortDraft(int minutes, String per) {
	}

	/** A ramp as written. */
	record RampDraft(int days, List<StepDraft> steps, @Nullable RampLightDraft byLight) {
	}

	/** What a ramp of light goes by, as written. */
	record RampLightDraft(@Nullable String way, @Nullable String lowestNight,
			@Nullable Map<String, String> lowestNightBySpecies) {
	}

	/** A step of a ramp as written. */
	record StepDraft(int days, String place, @Nullable Double hours, String text) {
	}

	/** The words as written. */
	record WordsDraft(String what, @Nullable String amount, @Nullable Map<String, String> amountBySpecies, String why,
			@Nullable String otherwise, @Nullable String caution) {
	}

	/** A source as written. */
	record SourceDraft(String title, @Nullable String publisher, @Nullable String address, String grade) {
	}

}
