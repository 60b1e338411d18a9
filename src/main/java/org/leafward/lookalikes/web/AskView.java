package org.leafward.lookalikes.web;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.lookalikes.CaseLook;
import org.leafward.lookalikes.core.NextQuestion;
import org.leafward.lookalikes.core.Question;
import org.leafward.lookalikes.draw.Drawings;

/**
 * A question as it is asked.
 *
 * @param id its identifier
 * @param text the question
 * @param help how to look; empty when nothing helps
 * @param several whether several answers can be ticked
 * @param options the answers
 * @param none the button for none of them; null where one must be chosen
 * @param where how far on somebody is
 * @param error what was wrong with the answer; null when nothing was
 * @param answered whether it was answered before
 */
record AskView(String id, String text, String help, boolean several, List<Option> options, @Nullable String none,
		String where, @Nullable String error, boolean answered) {

	/**
	 * An answer to tick.
	 *
	 * @param id its identifier
	 * @param words the answer
	 * @param help what it looks like; empty when nothing helps
	 * @param drawing inline SVG; null when nothing is drawn
	 * @param ticked whether it was ticked before
	 */
	record Option(String id, String words, String help, @Nullable String drawing, boolean ticked) {
	}

	static AskView of(CaseLook look, Question question, @Nullable String error) {
		Set<String> before = look.plantCase().answers().of(question.id());
		int done = (int) look.plantCase()
			.answers()
			.given()
			.keySet()
			.stream()
			.filter((id) -> !id.equals(question.id()))
			.count();
		boolean yesOrNo = question.answers().size() == 1;
		return new AskView(question.id(), question.text(), question.help(), question.several() && !yesOrNo,
				question.answers()
					.stream()
					.map((one) -> new Option(one.id(), one.words(), one.help(), Drawings.of(one.id()).orElse(null),
							before.contains(one.id())))
					.toList(),
				question.several() ? CaseView.none(question) : null,
				before.isEmpty()
						? "Question %d of at most %d.".formatted(done + 1, Math.max(done + 1, NextQuestion.MOST))
						: "Answered before.",
				error, !before.isEmpty());
	}

}
