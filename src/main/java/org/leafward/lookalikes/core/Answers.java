package org.leafward.lookalikes.core;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a gardener answered, in the order asked; never changes itself.
 *
 * @param given for each answered question its ticked answers, or only {@link #NONE} or
 * {@link #CANNOT_TELL}
 */
public record Answers(Map<String, Set<String>> given) {

	/** Reserved answer: none of these. */
	public static final String NONE = "none";

	/** Reserved answer: can't tell. */
	public static final String CANNOT_TELL = "cannot-tell";

	/** Nothing answered yet. */
	public static final Answers EMPTY = new Answers(Map.of());

	public Answers {
		Map<String, Set<String>> copy = new LinkedHashMap<>();
		given.forEach(
				(question, ticked) -> copy.put(question, Collections.unmodifiableSet(new LinkedHashSet<>(ticked))));
		given = Collections.unmodifiableMap(copy);
	}

	/**
	 * Answers a question or changes its answer.
	 * @param question the question
	 * @param ticked its answers, at least one
	 * @return the answers with it
	 */
	public Answers with(String question, Set<String> ticked) {
		Map<String, Set<String>> next = new LinkedHashMap<>(this.given);
		next.put(question, ticked);
		return new Answers(next);
	}

	/**
	 * Takes an answer back.
	 * @param question the question
	 * @return the answers without it
	 */
	public Answers without(String question) {
		Map<String, Set<String>> next = new LinkedHashMap<>(this.given);
		next.remove(question);
		return new Answers(next);
	}

	/**
	 * What still stands when the plant is looked at again: not what is asked each time,
	 * and nothing that nobody could tell.
	 * @param key the key as it is now; what it doesn't ask any more is left out
	 * @return the answers to begin with
	 */
	public Answers lasting(Key key) {
		Map<String, Set<String>> kept = new LinkedHashMap<>();
		this.given.forEach((id, ticked) -> key.question(id)
			.filter((question) -> !question.eachTime() && !ticked.contains(CANNOT_TELL))
			.filter((question) -> ticked.contains(NONE)
					|| ticked.stream().allMatch((one) -> question.answer(one).isPresent()))
			.ifPresent((question) -> kept.put(id, ticked)));
		return new Answers(kept);
	}

	public boolean has(String question) {
		return this.given.containsKey(question);
	}

	public Set<String> of(String question) {
		return this.given.getOrDefault(question, Set.of());
	}

	/**
	 * All that was ticked, without "none" and "can't tell".
	 * @return identifiers of evidences
	 */
	public Set<String> evidences() {
		return this.given.values()
			.stream()
			.flatMap(Set::stream)
			.filter((one) -> !one.equals(NONE) && !one.equals(CANNOT_TELL))
			.collect(Collectors.toUnmodifiableSet());
	}

}
