package org.leafward.advisories.core.cases;

import java.util.List;
import org.leafward.advisories.Bilingual;
import org.leafward.advisories.DraftText;
import org.leafward.language.Language;
import org.leafward.language.Phrasebook;
import org.leafward.measure.DayWindow;

/** Drafts the text about cases that came up near each other. */
public final class CaseDraft {

	/** Days that such an advisory is about. */
	public static final int LASTS = 14;

	private CaseDraft() {
	}

	/**
	 * Drafts the text.
	 * @param cluster the cases
	 * @param counties names of the counties
	 * @param days days that it is about
	 * @param book says days in the language of the text
	 * @return the text
	 */
	public static DraftText of(CaseClusters.Cluster cluster, List<String> counties, DayWindow days, Phrasebook book) {
		Bilingual words = cluster.cases().get(0).causeWords();
		String cause = words.in(book.language());
		String where = String.join(", ", counties);
		int count = cluster.cases().size();
		if (book.language() == Language.SPANISH) {
			return new DraftText("Varios casos que parecen " + cause,
					"En %s se respondieron %d casos cuya causa más probable es %s, a poca distancia unos de otros. Es la causa más probable, no un diagnóstico."
						.formatted(where, count, cause),
					where + ".", "Del %s al %s.".formatted(book.day(days.from()), book.day(days.to())),
					"Otras plantas de la misma clase en los alrededores pueden tener lo mismo o tenerlo pronto.",
					"Mire sus plantas de la misma clase y compárelas con la clave de síntomas parecidos antes de tratar nada. Lo que solo un laboratorio puede confirmar, envíelo. Si usa un producto, la etiqueta es la ley.");
		}
		return new DraftText("Several cases that look like " + cause,
				"%d cases with %s as the most likely cause were answered in %s, near each other. It is the most likely cause, not a diagnosis."
					.formatted(count, cause, where),
				where + ".", "From %s to %s.".formatted(book.day(days.from()), book.day(days.to())),
				"Other plants of the same kind around may have the same, or have it soon.",
				"Look at your plants of the same kind, and hold them against the look-alike key before you treat anything. What only a laboratory can confirm, send in. Where a product is used, the label is the law.");
	}

}
