package org.leafward.advisories.conditions;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A file of conditions as written. Components are named like the entries of the schema
 * advisories-1.json, which says what they mean.
 */
record ConditionDraft(String title, List<Entry> conditions) {

	/** A condition as written. */
	record Entry(String condition, Words title, String why, Alert alert, @Nullable Concerns concerns,
			Map<String, Limit> thresholds, @Nullable SeasonDraft season, @Nullable List<Check> when,
			@Nullable DayDraft onOneDay, @Nullable Integer lasts, @Nullable StagesDraft stages, Texts text,
			List<String> sources) {
	}

	/** Words in both languages as written. */
	record Words(String en, String es) {
	}

	/** Texts in both languages as written. */
	record Texts(Text en, Text es) {
	}

	/** A text as written. */
	record Text(String headline, String what, String impacts, String toDo) {
	}

	/** Defaults of the alert as written. */
	record Alert(String category, String urgency, String severity, String certainty, List<String> response) {
	}

	/** Plants as written. */
	record Concerns(@Nullable List<String> groups, @Nullable List<String> traits, @Nullable List<String> species) {
	}

	/** A threshold as written. */
	record Limit(Words label, double value, String unit, double lowest, double highest, String source,
			@Nullable Map<String, Double> regions, @Nullable Map<String, Double> counties) {
	}

	/** A season as written. */
	record SeasonDraft(End from, End to) {
	}

	/** An end of a season, or a marker of a figure, as written. */
	record End(@Nullable String marker, @Nullable String threshold, @Nullable Integer probability,
			@Nullable Integer days, @Nullable String dayOfYear) {
	}

	/** What has to hold, as written. */
	record Check(@Nullable String figure, @Nullable Integer days, @Nullable End marker, @Nullable String base,
			@Nullable String start, @Nullable Double upTo, @Nullable String atLeast, @Nullable String atMost,
			@Nullable List<Check> anyOf) {
	}

	/** What has to hold on one day, as written. */
	record DayDraft(int from, int to, @Nullable Boolean night, List<Check> all) {
	}

	/** Stages as written. */
	record StagesDraft(String base, String start, List<CropDraft> crops) {
	}

	/** A crop as written. */
	record CropDraft(Words name, List<String> species, List<StageDraft> stages) {
	}

	/** A stage as written. */
	record StageDraft(Words name, double sum, @Nullable Double killsTenth, @Nullable Double killsNine) {
	}

}
