package org.leafward.lookalikes.core;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Something that browns leaves.
 *
 * @param id lower case with hyphens
 * @param name for readers, without "suspected"
 * @param kind what sort of thing it is
 * @param laboratory whether only a laboratory can tell, so that it is always "suspected"
 * @param regulated whether an authority must hear of a suspicion and the plant must not
 * be moved
 * @param share how often a help desk meets it beside the others; 1 is usual, above 0 to
 * 10
 * @param tells what tells it apart, sentences
 * @param confirm what would settle it, sentences
 * @param sample what to send to a laboratory; null when nothing needs to be sent
 * @param remedies what to do
 * @param outlook what to expect, a sentence
 * @param hosts which plants get it
 * @param chances how likely each evidence is to be seen where this is the cause, above 0
 * and below 1; evidences that are not named are as likely as usual
 * @param references where this comes from
 */
public record Cause(String id, String name, Kind kind, boolean laboratory, boolean regulated, double share,
		String tells, String confirm, @Nullable Sample sample, List<Remedy> remedies, String outlook, Hosts hosts,
		Map<String, Double> chances, List<Reference> references) {

	public Cause {
		remedies = List.copyOf(remedies);
		chances = Map.copyOf(chances);
		references = List.copyOf(references);
	}

	/**
	 * The name to show.
	 * @return with "suspected" where only a laboratory can tell
	 */
	public String title() {
		return this.laboratory ? "Suspected: " + this.name : this.name;
	}

}
