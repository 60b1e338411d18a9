package org.leafward.advisories;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

/**
 * A county that a proposal is about.
 *
 * @param code as {@link org.leafward.regions.County#code()} gives it
 * @param name its name
 * @param region state or province by ISO 3166-2
 * @param zone its time zone
 * @param from first day there that it is about
 * @param to last day there that it is about
 * @param figures the figures and the thresholds that they met, most telling first
 * @param reasons why it was proposed, a sentence each, in English
 * @param standing what became of it for this county
 */
public record AffectedCounty(String code, String name, String region, ZoneId zone, LocalDate from, LocalDate to,
		List<Figure> figures, List<String> reasons, Standing standing) {

	public AffectedCounty {
		figures = List.copyOf(figures);
		reasons = List.copyOf(reasons);
	}

	/** What became of a proposal for a county. */
	public enum Standing {

		/** Nobody has decided. */
		OPEN,

		/** A specialist of the county needs no advisory. */
		DISMISSED,

		/** An advisory was made of it. */
		COMPOSED

	}

}
