package org.leafward.knowledge;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Knowledge files that can't be used; the server doesn't start with them. The message
 * lists every problem on a line of its own.
 */
public class BrokenKnowledge extends RuntimeException {

	private static final long serialVersionUID = 1L;

	private final transient List<Problem> problems;

	/**
	 * Creates the refusal.
	 * @param problems what is wrong, at least one
	 */
	public BrokenKnowledge(List<Problem> problems) {
		super(problems.stream()
			.map(Problem::words)
			.collect(Collectors.joining("\n", "%d problem(s) in the knowledge files:\n".formatted(problems.size()),
					"")));
		this.problems = List.copyOf(problems);
	}

	public List<Problem> problems() {
		return this.problems;
	}

}
