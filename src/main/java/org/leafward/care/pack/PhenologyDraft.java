package org.leafward.care.pack;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.care.pack.PackDraft.AnchorDraft;
import org.leafward.care.pack.PackDraft.SourceDraft;

/**
 * Phases and events as written. Components are named like the entries of the schema
 * phenology-1.json, which says what they mean.
 */
record PhenologyDraft(String title, @Nullable List<PhaseDraft> phases, @Nullable List<EventDraft> events) {

	/** A phase as written. */
	record PhaseDraft(String phase, String words, String lookFor, List<EstimateDraft> estimates) {
	}

	/** An estimate as written. */
	record EstimateDraft(@Nullable PlantsDraft concerns, AnchorDraft at, List<SourceDraft> sources) {
	}

	/** The plants of an estimate as written. */
	record PlantsDraft(@Nullable List<String> groups, @Nullable List<String> species, @Nullable List<String> traits) {
	}

	/** An event as written. */
	record EventDraft(String event, String words) {
	}

}
