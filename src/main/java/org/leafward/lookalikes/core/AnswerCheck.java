package org.leafward.lookalikes.core;

import java.util.LinkedHashSet;
import java.util.Set;
import org.leafward.measure.BadInput;

/** Whether what somebody ticked answers a question. Pure. */
public final class AnswerCheck {

	private AnswerCheck() {
	}

	/**
	 * Checks an answer.
	 * @param question the question
	 * @param ticked what was ticked
	 * @return the answer as it is kept, in the order of the question
	 * @throws BadInput when nothing is ticked, something is ticked that is no answer, or
	 * more than one where one is asked for
	 */
	public static Set<String> of(Question question, Set<String> ticked) {
		if (ticked.isEmpty()) {
			throw new BadInput("nothing is ticked", "answer",
					question.several() ? "tick what you see, or say that you see none of it or can’t tell"
							: "choose one, or say that you can’t tell");
		}
		if (ticked.contains(Answers.CANNOT_TELL)) {
			return Set.of(Answers.CANNOT_TELL);
		}
		if (ticked.contains(Answers.NONE) && question.several()) {
			return Set.of(Answers.NONE);
		}
		Set<String> kept = new LinkedHashSet<>();
		question.answers().stream().map(Answer::id).filter(ticked::contains).forEach(kept::add);
		if (kept.size() < ticked.size()) {
			throw new BadInput("something was ticked that is no answer to “%s”".formatted(question.text()), "answer",
					"choose from the answers of this question");
		}
		if (kept.size() > 1 && !question.several()) {
			throw new BadInput("more than one answer was chosen", "answer", "choose the one that fits best");
		}
		return kept;
	}

}
