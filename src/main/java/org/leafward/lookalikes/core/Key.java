package org.leafward.lookalikes.core;

import java.util.List;
import java.util.Optional;

/**
 * The look-alike key: immutable, checked when it was read.
 *
 * @param version fingerprint of the files that it was read from
 * @param causes the causes, at least two
 * @param questions the questions, in the order in which a leaflet would ask them
 * @param pairs causes that answers alone often can't part
 * @param scale what the words for chances stand for, and how far to trust their sum
 */
public record Key(String version, List<Cause> causes, List<Question> questions, List<Pair> pairs, Scale scale) {

	/**
	 * How to weigh.
	 *
	 * @param typical chance of an evidence that is typical of a cause
	 * @param possible chance of one that is possible
	 * @param unlikely chance of one that speaks against it as the only cause
	 * @param mistaken part of all answers that are mistaken, 0 and above and below 1;
	 * these are as likely as usual under every cause, so that one slip rules nothing out
	 * @param unticked how much an answer that was not ticked counts beside one that was,
	 * 0 to 1: people overlook things
	 * @param damping by what the sum of all evidence is multiplied, above 0 to 1, since
	 * evidences hang together and the key treats them as if they didn't
	 */
	public record Scale(double typical, double possible, double unlikely, double mistaken, double unticked,
			double damping) {
	}

	public Key {
		causes = List.copyOf(causes);
		questions = List.copyOf(questions);
		pairs = List.copyOf(pairs);
	}

	public Optional<Cause> cause(String id) {
		return this.causes.stream().filter((one) -> one.id().equals(id)).findFirst();
	}

	public Optional<Question> question(String id) {
		return this.questions.stream().filter((one) -> one.id().equals(id)).findFirst();
	}

	public Optional<Answer> evidence(String id) {
		return this.questions.stream()
			.flatMap((one) -> one.answers().stream())
			.filter((one) -> one.id().equals(id))
			.findFirst();
	}

	/**
	 * The question that an evidence answers.
	 * @param evidence the evidence
	 * @return empty when the key doesn't know it
	 */
	public Optional<Question> questionOf(String evidence) {
		return this.questions.stream().filter((one) -> one.answer(evidence).isPresent()).findFirst();
	}

}
