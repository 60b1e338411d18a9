package org.leafward.lookalikes.core;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One thing that the site's record says, which counts like an answer until it is struck.
 *
 * @param id names the line for striking; the same while the facts are the same
 * @param kind which part of the record says so
 * @param words what it says, a sentence
 * @param from where that comes from, for example "Care log, Sat 12 Sep 2026"
 * @param evidence the evidence that it is; null when it speaks for causes directly
 * @param present whether the evidence is there; false when the record says that it is not
 * @param causes for causes by identifier how many times as likely each becomes, above 0;
 * empty when it is an evidence
 */
public record RecordLine(String id, Kind kind, String words, String from, @Nullable String evidence, boolean present,
		Map<String, Double> causes) {

	/** Which part of the record speaks. */
	public enum Kind {

		/** The species in the catalogue. */
		SPECIES,

		/** The planting in the register. */
		PLANTING,

		/** The site in the register. */
		SITE,

		/** What was done. */
		CARE_LOG,

		/** What was seen. */
		OBSERVATION,

		/** The weather at the place. */
		WEATHER,

		/** A soil test. */
		SOIL_TEST

	}

	public RecordLine {
		causes = Map.copyOf(causes);
	}

	/**
	 * A line that is an evidence.
	 * @param id names the line
	 * @param kind which part of the record
	 * @param words what it says
	 * @param from where it comes from
	 * @param evidence the evidence
	 * @param present whether it is there
	 * @return the line
	 */
	public static RecordLine of(String id, Kind kind, String words, String from, String evidence, boolean present) {
		return new RecordLine(id, kind, words, from, evidence, present, Map.of());
	}

}
