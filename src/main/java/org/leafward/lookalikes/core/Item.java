package org.leafward.lookalikes.core;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * One thing that is known, and how likely it is under each cause.
 *
 * @param words what it is
 * @param evidence the evidence; null when a record line speaks for causes directly
 * @param line the line of the record that says so; null when the gardener did
 * @param likely likelihood for each cause in the key's order, above 0
 */
record Item(String words, @Nullable String evidence, @Nullable RecordLine line, double[] likely) {

	/** What stands before an evidence that was looked for and not seen. */
	private static final String NOT = "not so: ";

	/**
	 * All that is known. What the gardener says goes before what the record says of the
	 * same evidence, so that nothing counts twice.
	 * @param key the key
	 * @param answers the answers
	 * @param record the record, without struck lines
	 * @return in the order of the questions, then of the record
	 */
	static List<Item> of(Key key, Answers answers, List<RecordLine> record) {
		List<Item> items = new ArrayList<>();
		Chances chances = new Chances(key);
		Set<String> recorded = new HashSet<>();
		record.stream().filter(RecordLine::present).forEach((line) -> recorded.add(String.valueOf(line.evidence())));
		Set<String> settled = new HashSet<>();
		for (Question question : key.questions()) {
			Set<String> ticked = answers.of(question.id());
			if (ticked.isEmpty() || ticked.contains(Answers.CANNOT_TELL)) {
				continue;
			}
			List<Answer> known = Chances.known(question, ticked);
			if (question.several()) {
				several(key, chances, question, known, ticked.contains(Answers.NONE), recorded, items, settled);
			}
			else if (!known.isEmpty()) {
				Answer one = known.get(0);
				items.add(new Item(one.brief(), one.id(), null,
						each(key, (cause) -> chances.among(cause, question, one))));
				question.answers().forEach((other) -> settled.add(other.id()));
			}
		}
		record.forEach((line) -> add(key, chances, line, settled, items));
		return items;
	}

	private static void several(Key key, Chances chances, Question question, List<Answer> ticked, boolean none,
			Set<String> recorded, List<Item> items, Set<String> settled) {
		if (ticked.isEmpty() && !none) {
			return;
		}
		double weight = (none || question.yesOrNo()) ? 1 : key.scale().unticked();
		for (Answer one : question.answers()) {
			if (ticked.contains(one)) {
				items.add(new Item(one.brief(), one.id(), null, each(key, (cause) -> chances.of(cause, one))));
				settled.add(one.id());
			}
			// What the record says, and nobody struck, was only overlooked.
			else if (!recorded.contains(one.id())) {
				items.add(new Item(NOT + one.brief(), one.id(), null,
						each(key, (cause) -> chances.not(cause, one, weight))));
				settled.add(one.id());
			}
		}
	}

	private static void add(Key key, Chances chances, RecordLine line, Set<String> settled, List<Item> items) {
		String evidence = line.evidence();
		if (evidence == null) {
			items.add(new Item(line.words(), null, line,
					each(key, (cause) -> line.causes().getOrDefault(cause.id(), 1.0))));
		}
		else if (settled.add(evidence)) {
			key.evidence(evidence)
				.ifPresent((answer) -> items.add(new Item(line.words(), evidence, line, each(key,
						(cause) -> line.present() ? chances.of(cause, answer) : chances.not(cause, answer, 1)))));
		}
	}

	private static double[] each(Key key, ToDoubleFunction<Cause> likely) {
		return key.causes().stream().mapToDouble(likely).toArray();
	}

	/**
	 * How many times as likely it makes a cause beside all the others together, these
	 * weighed by how often they are met.
	 * @param key the key
	 * @param cause place of the cause in the key
	 * @return above 0
	 */
	double times(Key key, int cause) {
		double sum = 0;
		double shares = 0;
		for (int i = 0; i < this.likely.length; i++) {
			if (i != cause) {
				double share = key.causes().get(i).share();
				sum += share * this.likely[i];
				shares += share;
			}
		}
		return this.likely[cause] / (sum / shares);
	}

}
