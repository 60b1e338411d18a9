package org.leafward.lookalikes.core;

import java.util.List;
import java.util.Optional;

/**
 * A question to the gardener. "Can't tell" ({@link Answers#CANNOT_TELL}) is always an
 * answer; where several can be ticked, so is "none of these" ({@link Answers#NONE}).
 *
 * @param id lower case with hyphens
 * @param text the question
 * @param help how to look, a sentence; may be empty
 * @param several whether several answers can be ticked
 * @param answers the answers in the order shown
 */
public record Question(String id, String text, String help, boolean several, List<Answer> answers) {

	public Question {
		answers = List.copyOf(answers);
	}

	public Optional<Answer> answer(String evidence) {
		return this.answers.stream().filter((one) -> one.id().equals(evidence)).findFirst();
	}

}
