package org.leafward.accounts.signin;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says how to mend a weak operator token instead of printing a stack trace. */
class WeakOperatorTokenAnalyzer extends AbstractFailureAnalyzer<WeakOperatorToken> {

	@Override
	protected FailureAnalysis analyze(Throwable rootFailure, WeakOperatorToken cause) {
		return new FailureAnalysis(cause.getMessage(),
				"Set LEAFWARD_OPERATOR_TOKEN to a longer random text, for example the output of: openssl rand -hex 24",
				cause);
	}

}
