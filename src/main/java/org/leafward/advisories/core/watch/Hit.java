package org.leafward.advisories.core.watch;

import java.time.LocalDate;
import java.util.List;
import org.leafward.advisories.Bilingual;
import org.leafward.advisories.Figure;

/**
 * A condition that holds at a place.
 *
 * @param from first day that it is about
 * @param to last day that it is about
 * @param figures the figures and the thresholds that they met
 * @param reasons why, a sentence each
 * @param crops crops whose buds are near to be killed, with their stage; empty where it
 * is about none
 */
public record Hit(LocalDate from, LocalDate to, List<Figure> figures, List<String> reasons, List<Bilingual> crops) {

	public Hit {
		figures = List.copyOf(figures);
		reasons = List.copyOf(reasons);
		crops = List.copyOf(crops);
	}

}
