package org.leafward.knowledge;

import java.util.stream.Collectors;
import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Shows an operator the list of problems in place of a stack trace. */
class BrokenKnowledgeAnalyzer extends AbstractFailureAnalyzer<BrokenKnowledge> {

	@Override
	protected FailureAnalysis analyze(Throwable rootFailure, BrokenKnowledge cause) {
		String list = cause.problems()
			.stream()
			.map((problem) -> " - " + problem.words())
			.collect(Collectors.joining("\n"));
		return new FailureAnalysis("The knowledge files have problems:\n\n" + list,
				"Mend the lines named above. Files of your own are in the folder named by leafward.knowledge.directory;"
						+ " without a file there, the one that comes with the server is used.",
				cause);
	}

}
