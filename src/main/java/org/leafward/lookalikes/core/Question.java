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
 * @param eachTime whether it is asked anew when a plant is looked at again a season on
 * @param ease the share of people who can answer it, above 0 to 1; a question that few
 * can answer is asked later
 * @param answers the answers in the order shown
 */
public record Question(String id, String text, String help, boolean several, boolean eachTime, double ease,
		List<Answer> answers) {

	public Question {
		answers = List.copyOf(answers);
	}

	/**
	 * Whether it is asked with yes and no.
	 * @return true when it has one answer beside "no" ({@link Answers#NONE})
	 */
	public boolean yesOrNo() {
		return this.several && this.answers.size() == 1;
	}

	public Optional<Answer> answer(String evidence) {
		return this.answers.stream().filter((one) -> one.id().equals(evidence)).findFirst();
	}

}
