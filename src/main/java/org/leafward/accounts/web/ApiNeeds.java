package org.leafward.accounts.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.leafward.accounts.Scope;
import org.leafward.accounts.signin.SignedIn;
import org.springframework.http.HttpMethod;
import org.springframework.security.authorization.AuthorizationDecision;
import org.springframework.security.authorization.AuthorizationManager;
import org.springframework.security.authorization.AuthorizationResult;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.access.intercept.RequestAuthorizationContext;
import org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;

/**
 * What a call of the API needs before anybody asks whose the thing is: a scope, and for
 * some calls a role.
 *
 * @param scope what the token must be good for
 * @param who who may call at all
 */
record ApiNeeds(Scope scope, Who who) {

	private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");

	private static final PathPatternRequestMatcher.Builder PATHS = PathPatternRequestMatcher.withDefaults();

	private static final List<RequestMatcher> OPERATOR = List.of(PATHS.matcher(HttpMethod.POST, "/api/v1/stations"),
			PATHS.matcher(HttpMethod.POST, "/api/v1/stations/**"), PATHS.matcher(HttpMethod.PUT, "/api/v1/stations/**"),
			PATHS.matcher("/api/v1/sources"), PATHS.matcher("/api/v1/replanning"),
			PATHS.matcher(HttpMethod.POST, "/api/v1/people"), PATHS.matcher("/api/v1/reminders/bounces"));

	private static final List<RequestMatcher> RULES = List.of(PATHS.matcher("/api/v1/packs"),
			PATHS.matcher("/api/v1/packs/**"));

	/** Who may call. */
	enum Who {

		/** Whoever has a token; whose the thing is, is asked later. */
		ANYBODY,

		/** Specialists and the operator. */
		SPECIALIST,

		/** The operator, by token or by role. */
		OPERATOR

	}

	/**
	 * What a call needs.
	 * @param request the call
	 */
	static ApiNeeds of(HttpServletRequest request) {
		if (RULES.stream().anyMatch((one) -> one.matches(request))) {
			return new ApiNeeds(Scope.RULES, Who.SPECIALIST);
		}
		Scope scope = READING.contains(request.getMethod()) ? Scope.READ : Scope.WRITE;
		return new ApiNeeds(scope,
				OPERATOR.stream().anyMatch((one) -> one.matches(request)) ? Who.OPERATOR : Who.ANYBODY);
	}

	boolean metBy(SignedIn known) {
		return known.holds(this.scope) && switch (this.who) {
			case ANYBODY -> true;
			case SPECIALIST -> known.mayChangeRules();
			case OPERATOR -> known.mayDoEverything();
		};
	}

	/** The same for Spring Security. */
	static AuthorizationManager<RequestAuthorizationContext> met() {
		return new AuthorizationManager<>() {

			@Override
			public AuthorizationResult authorize(Supplier<? extends Authentication> authentication,
					RequestAuthorizationContext context) {
				return new AuthorizationDecision(
						authentication.get() instanceof SignedIn known && of(context.getRequest()).metBy(known));
			}

		};
	}

}
